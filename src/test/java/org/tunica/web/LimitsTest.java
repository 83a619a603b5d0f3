package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.FaultyInput;

/** Who asks too much is told when to ask again, and the others are not held up. */
class LimitsTest {
    private static final String PATH = "/cds-services";

    @Test
    void anAddressThatAsksTooOften_isToldWhenToAskAgain() {
        try (Served served = Served.with("limits: { perAddressPerMinute: 3 }\n")) {
            for (int times = 0; times < 3; times++) {
                assertEquals(401, served.get(PATH).statusCode());
            }
            HttpResponse<String> refused = served.get(PATH);
            assertEquals(429, refused.statusCode());
            assertEquals("21", refused.headers().firstValue("Retry-After").orElse(""));
            assertTrue(refused.body().contains("ask again later"), refused.body());
            assertEquals(429, served.get("/fhir/metadata").statusCode());
            assertTrue(served.get("/fhir/metadata").body().contains("throttled"));
            assertEquals(200, served.get("/server/health/liveness").statusCode());
        }
    }

    @Test
    void aRecordSystemThatCallsTooOften_isToldSo_andOneWithoutATokenIsNot() {
        String settings = Served.signed(Keys.published(Keys.CURVED)) + "limits: { perCallerPerMinute: 2 }\n";
        try (Served served = Served.with(settings)) {
            assertEquals(200, call(served));
            assertEquals(200, call(served));
            assertEquals(429, call(served));
            assertEquals(401, served.get(PATH).statusCode());
        }
    }

    private static int call(Served served) {
        String token = Token.sound(Served.BASE + PATH, Served.NOW).signed();
        return served.send(served.at(PATH).header("Authorization", "Bearer " + token))
                .statusCode();
    }

    @Test
    void placesComeBackWithTime_eachToItsAsker() {
        Moving clock = new Moving();
        Rates rates = new Rates(60, clock);
        for (int times = 0; times < 60; times++) {
            assertEquals(0, rates.secondsToWait("a"));
        }
        assertEquals(2, rates.secondsToWait("a"));
        assertEquals(0, rates.secondsToWait("b"));
        clock.now = clock.now.plus(Duration.ofSeconds(2));
        assertEquals(0, rates.secondsToWait("a"));
        assertEquals(0, rates.secondsToWait("a"));
        assertTrue(rates.secondsToWait("a") > 0);
    }

    @Test
    void settingsBeyondReason_areRefusedTogether() {
        String settings = "format: tunica-server/1\nlimits: { perAddressPerMinute: 0, atOnce: 1000 }\nrecordSystems:\n"
                + "  baseAddress: ftp://x\n  origins: [\"*\"]\n  answerWithinMs: 0\n  calls: any\n"
                + "  callers:\n  - { name: A b, issuer: i, keys: nonsense }\n"
                + "  - { name: c, issuer: i, keyAddresses: [\"http://elsewhere.example/k\"] }\n";
        FaultyInput faulty =
                assertThrows(FaultyInput.class, () -> ServerSettings.read("server.yaml", settings.getBytes()));
        assertEquals(10, faulty.faults().size(), faulty::getMessage);
    }

    private static final class Moving extends Clock {
        private Instant now = Served.NOW;

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
