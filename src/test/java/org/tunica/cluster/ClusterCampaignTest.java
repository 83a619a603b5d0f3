package org.tunica.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.pastcases.CaseProgress;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.CaseSource;

/** The same at length: two thousand questions, and nodes killed while they are asked and while an index is loaded. */
@Tag("deep")
class ClusterCampaignTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final Questions QUESTIONS = new Questions(TUNICA, 23);

    @Test
    void twoThousandQuestions_haveTheSameAnswerFromBoth() {
        CaseSource source = TUNICA.likeness().inventedSource(7, 20_000);
        try (CaseLibrary local = CaseLibrary.inMemory(source, TUNICA.knowledge(), TUNICA.physics());
                TestCluster nodes = TestCluster.of(3)) {
            Cluster cluster = TUNICA.likeness().cluster(nodes.address());
            cluster.rebuild(source, Cluster.Spread.USUAL, CaseProgress.NONE);
            try (CaseLibrary far = cluster.open()) {
                for (int question = 0; question < 2_000; question++) {
                    QUESTIONS.compare(question, local, far);
                }
            }
        }
    }

    @Test
    void nodeKilledWhileQuestionsAreAsked_everyoneIsAnswered() {
        CaseSource source = TUNICA.likeness().inventedSource(7, 5_000);
        try (CaseLibrary local = CaseLibrary.inMemory(source, TUNICA.knowledge(), TUNICA.physics());
                TestCluster nodes = TestCluster.of(3)) {
            Cluster cluster = TUNICA.likeness().cluster(nodes.address());
            cluster.rebuild(source, Cluster.Spread.USUAL, CaseProgress.NONE);
            nodes.awaitHealthy();
            int vain = 0;
            try (CaseLibrary far = cluster.open()) {
                for (int question = 0; question < 300; question++) {
                    if (question == 100) {
                        nodes.kill(1);
                    }
                    vain += QUESTIONS.comparePatiently(question, local, far);
                }
            }
            System.out.println("asked in vain: " + vain);
        }
    }

    @Test
    void nodeKilledWhileLoading_theLoadIsWhole() {
        CaseSource source = TUNICA.likeness().inventedSource(7, 20_000);
        try (TestCluster nodes = TestCluster.of(3)) {
            Cluster cluster = TUNICA.likeness().cluster(nodes.address());
            AtomicBoolean killed = new AtomicBoolean();
            CaseSource deadly = new DisturbedSource(source, 8_000, () -> {
                killed.set(true);
                nodes.kill(2);
            });
            Cluster.Rebuilt rebuilt = cluster.rebuild(deadly, Cluster.Spread.USUAL, CaseProgress.NONE);
            assertTrue(killed.get());
            Verification held = cluster.verify(source, CaseProgress.NONE);
            assertTrue(held.holds(), held::toString);
            assertEquals(held.segments(), rebuilt.segments());
        }
    }
}
