package org.tunica.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.tunica.Cold;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.CaseProgress;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.CaseSource;
import org.tunica.similar.SimilarFilter;

/** Past segments on a real search engine of three nodes, against the index beside the cases, query by query. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class ClusterTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final int CASES = 400;
    private static final CaseSource SOURCE = TUNICA.likeness().inventedSource(7, CASES);
    private static final Questions QUESTIONS = new Questions(TUNICA, 11);

    private static TestCluster nodes;
    private static Cluster cluster;
    private static CaseLibrary local;
    private static Cluster.Rebuilt rebuilt;

    @BeforeAll
    static void load() {
        nodes = TestCluster.of(3);
        cluster = TUNICA.likeness().cluster(nodes.address());
        rebuilt = cluster.rebuild(SOURCE, Cluster.Spread.USUAL, CaseProgress.NONE);
        nodes.awaitHealthy();
        local = CaseLibrary.inMemory(SOURCE, TUNICA.knowledge(), TUNICA.physics());
    }

    @AfterAll
    static void stop() {
        local.close();
        nodes.close();
    }

    @Test
    void everyQuestion_hasTheSameAnswerFromBoth() {
        assertEquals(local.size(), rebuilt.segments());
        try (CaseLibrary far = cluster.open()) {
            assertEquals(local.size(), far.size());
            assertEquals(local.says(), far.says());
            assertTrue(far.invented());
            for (int question = 0; question < 60; question++) {
                QUESTIONS.compare(question, local, far);
            }
        }
    }

    @Test
    void words_areFoundAndOrderedTheSame() {
        try (CaseLibrary far = cluster.open()) {
            QUESTIONS.compareWords(local, far);
        }
    }

    @Test
    void index_isHeldAgainstItsCasesSegmentBySegment() {
        assertTrue(cluster.verify(SOURCE, CaseProgress.NONE).holds());
        Verification other = cluster.verify(TUNICA.likeness().inventedSource(7, CASES + 10), CaseProgress.NONE);
        assertFalse(other.holds());
        assertTrue(other.missing() > 0 && other.extra() == 0 && other.different() == 0, other::toString);
        Verification fewer = cluster.verify(TUNICA.likeness().inventedSource(7, CASES - 10), CaseProgress.NONE);
        assertTrue(fewer.missing() == 0 && fewer.extra() > 0, fewer::toString);
    }

    @Test
    void loadThatFails_leavesTheOneInUse() {
        CaseSource breaks = new DisturbedSource(SOURCE, 100, () -> {
            throw new IllegalStateException("planted");
        });
        assertThrows(
                IllegalStateException.class, () -> cluster.rebuild(breaks, Cluster.Spread.USUAL, CaseProgress.NONE));
        try (CaseLibrary far = cluster.open()) {
            assertEquals(local.size(), far.size());
        }
    }

    @Test
    void rulesWithOtherWords_haveNoIndexYet() {
        Tunica other = Cold.tunica();
        Cluster theirs = other.likeness().cluster(nodes.address());
        FaultyInput refused = assertThrows(FaultyInput.class, theirs::open);
        assertTrue(
                refused.getMessage().contains("no index was loaded for the words and numbers"), refused.getMessage());
    }

    @Test
    void addressWithoutProtection_isRefusedAndSoIsAPasswordInIt() {
        for (String address :
                new String[] {"http://10.0.0.7:9200", "https://a:b@x.example:9200", "ftp://x", "nowhere"}) {
            assertThrows(FaultyInput.class, () -> EngineAddress.of(address, Map.of()), address);
        }
        assertThrows(
                FaultyInput.class,
                () -> EngineAddress.of("https://x.example:9200", Map.of(EngineAddress.USER, "tunica")));
        assertEquals(
                Optional.of(new EngineAddress.Login("tunica", "not-a-secret")),
                EngineAddress.of(
                                "https://x.example:9200,https://y.example:9200",
                                Map.of(EngineAddress.USER, "tunica", EngineAddress.PASSWORD, "not-a-secret"))
                        .login());
    }

    @Test
    void nobodyThere_isSaid() {
        Cluster nowhere = TUNICA.likeness().cluster(EngineAddress.of("http://127.0.0.1:9", Map.of()));
        EngineUnavailable refused = assertThrows(EngineUnavailable.class, nowhere::open);
        assertTrue(refused.getMessage().contains("does not answer"), refused.getMessage());
    }

    @Test
    void filters_countTheSame() {
        SimilarFilter filter = new SimilarFilter(
                Optional.of("laser-1470-radial"),
                Optional.of(SimilarFilter.Outcome.CLOSED),
                Optional.of(true),
                Optional.empty(),
                Optional.empty());
        try (CaseLibrary far = cluster.open()) {
            QUESTIONS.compare(3, filter, local, far);
        }
    }

    /** Every part has a copy elsewhere; who asks meanwhile may have to ask again. */
    @Test
    @Order(Integer.MAX_VALUE)
    void nodeKilled_theOthersAnswer() {
        try (CaseLibrary far = cluster.open()) {
            nodes.kill(2);
            for (int question = 60; question < 70; question++) {
                QUESTIONS.comparePatiently(question, local, far);
            }
        }
    }
}
