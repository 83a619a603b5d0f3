package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.Tunica;
import org.tunica.cluster.Cluster;
import org.tunica.cluster.EngineUnavailable;
import org.tunica.cluster.TestCluster;
import org.tunica.pastcases.CaseProgress;
import org.tunica.pastcases.PastCase;
import org.tunica.similar.CaseSource;
import org.tunica.store.Actor;
import org.tunica.store.Role;

/** A server whose past cases are searched on a real search engine of one node. */
class SharedIndexTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final String PAGE = "/cases/heron-1/similar/L1";
    private static final Actor SETTING_UP = new Actor("test");
    private static final Duration LONGEST_WAIT = Duration.ofSeconds(60);

    @TempDir
    private Path folder;

    private final List<PastCase> released = new ArrayList<>();

    @Test
    void casesReleasedAndWithdrawn_areFollowedAndAnOutageIsSaid() throws Exception {
        try (TestCluster nodes = TestCluster.of(1);
                Clinic clinic = Clinic.at(folder.toString(), settings -> settings.with(nodes.address()))) {
            clinic.user("wren", Role.SPECIALIST);
            clinic.keep("heron-1", "straight-thigh-trunk");
            Browser browser = clinic.signedIn("wren");
            assertTrue(browser.whole(PAGE).contains("No past case is released here yet"), "nothing to compare with");
            for (int number = 0; number < 12; number++) {
                release(clinic, number);
            }
            awaitFollowed(nodes);
            assertTrue(browser.whole(PAGE).contains("Past cases released here."));
            release(clinic, 12);
            String unreadable = releaseUnreadable(clinic);
            awaitFollowed(nodes);
            assertTrue(browser.whole(PAGE).contains("LEFT OUT, for the rules in force cannot read it: " + unreadable));
            clinic.store.pastCases().withdraw(SETTING_UP, released.remove(0).id());
            awaitFollowed(nodes);
            assertTrue(browser.whole(PAGE).contains("cannot read it: " + unreadable), "it is still there");
            clinic.store.pastCases().withdraw(SETTING_UP, unreadable);
            release(clinic, 13);
            awaitFollowed(nodes);
            assertFalse(browser.whole(PAGE).contains("LEFT OUT"));
            nodes.kill(0);
            HttpResponse<String> page = browser.get(PAGE);
            assertEquals(503, page.statusCode());
            assertTrue(page.body().contains("Past cases cannot be searched now"), page.body());
            assertEquals(200, browser.get("/cases/heron-1").statusCode());
        }
    }

    /** One with a technique that no rules of today know. */
    private static String releaseUnreadable(Clinic clinic) {
        PastCase pastCase = TUNICA.pastCases().inventedLibrary(6).at(1);
        String line = TUNICA.pastCases().toLine(pastCase);
        String other = line.replaceAll("\"technique\":\"[a-z0-9-]+\"", "\"technique\":\"of-another-time\"");
        assertNotEquals(line, other);
        clinic.store.pastCases().bringIn(SETTING_UP, pastCase.id(), other);
        return pastCase.id();
    }

    private void release(Clinic clinic, int number) {
        PastCase pastCase = TUNICA.pastCases().inventedLibrary(5).at(number);
        clinic.store
                .pastCases()
                .bringIn(SETTING_UP, pastCase.id(), TUNICA.pastCases().toLine(pastCase));
        released.add(pastCase);
    }

    /** Waits until the index holds what is released, segment by segment, and nothing else. */
    private void awaitFollowed(TestCluster nodes) throws InterruptedException {
        Cluster cluster = TUNICA.likeness().cluster(nodes.address());
        Instant end = Instant.now().plus(LONGEST_WAIT);
        while (!holds(cluster)) {
            assertTrue(Instant.now().isBefore(end), "the index does not follow");
            Thread.sleep(200);
        }
    }

    private boolean holds(Cluster cluster) {
        try {
            return cluster.digest().isPresent()
                    && cluster.verify(new Listed(released), CaseProgress.NONE).holds();
        } catch (EngineUnavailable e) {
            return false; // the index is being changed for another
        }
    }

    /** Cases of a list. */
    private record Listed(List<PastCase> cases) implements CaseSource {
        @Override
        public boolean invented() {
            return true;
        }

        @Override
        public String says() {
            return "listed";
        }

        @Override
        public String digest() {
            return "listed";
        }

        @Override
        public void each(Taker taker) {
            for (int i = 0; i < cases.size(); i++) {
                taker.take(i, cases.get(i));
            }
        }

        @Override
        public PastCase at(long where) {
            return cases.get((int) where);
        }
    }
}
