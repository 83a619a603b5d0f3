package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/**
 * Whatever is sent over a socket to whichever address, the server neither fails nor hangs, and says what is wrong in the
 * form the asker reads.
 */
class HostileRequestsTest {
    /** Everything that is asked here may be asked as often as it likes, and no answer waits for heat to be computed. */
    private static final String SETTINGS = "adviceWithoutSignIn: true\n"
            + "limits: { perAddressPerMinute: 1000000, perCallerPerMinute: 1000000 }\n"
            + "recordSystems:\n  site: knowledge/demo/fhir/site.yaml\n  answerWithinMs: 1\n  recordWithinMs: 1\n"
            + "  baseAddress: \"" + Served.BASE + "\"\n";

    /** A transfer coding or a version of HTTP that no server speaks, as RFC 9110 wants it told. */
    private static final Set<Integer> NOT_SPOKEN = Set.of(501, 505);

    static final Map<Integer, Integer> STATUSES = new TreeMap<>();

    private static Served open;
    private static Served strict;

    @BeforeContainer
    static void start() {
        open = Served.with(SETTINGS + "  calls: unsigned-for-tests\n");
        strict = Served.with(SETTINGS + "  callers:\n  - { name: ward-7, issuer: \"" + Token.ISSUER + "\", keys: '"
                + Keys.published(Keys.CURVED) + "' }\n");
    }

    @AfterContainer
    static void stop() {
        open.close();
        strict.close();
        for (int status : new int[] {200, 400, 401, 404, 405, 415}) {
            assertTrue(STATUSES.containsKey(status), STATUSES::toString);
        }
    }

    @Property(tries = 2_000, seed = "20261127", shrinking = ShrinkingMode.OFF)
    void aSlice(@ForAll long seed) {
        ask(seed);
    }

    @Tag("deep")
    @Property(tries = 100_000, seed = "20261128", shrinking = ShrinkingMode.OFF)
    void aCampaign(@ForAll long seed) {
        ask(seed);
    }

    static void ask(long seed) {
        Random random = new Random(seed);
        Served asked = random.nextInt(4) == 0 ? strict : open;
        byte[] request = HostileRequest.make(random);
        RawAnswer answer = RawAnswer.to(asked.port(), request);
        String shown = HostileRequest.shown(request) + "\n=> " + answer;
        STATUSES.merge(answer.status(), 1, Integer::sum);
        if (answer.status() == 0) {
            assertTrue(answer.isSilent() && !HostileRequest.isWhole(request), shown);
        } else if (answer.status() >= 400) {
            assertTrue(answer.status() < 500 || NOT_SPOKEN.contains(answer.status()), shown);
            assertTrue(answer.isEmptyOrTells() || answer.isPage() && HostileRequest.mayBeForPages(request), shown);
            assertFalse(answer.body().contains("Exception") || answer.body().contains("org."), shown);
        }
    }
}
