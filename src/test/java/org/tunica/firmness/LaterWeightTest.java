package org.tunica.firmness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** One more weight beside others: even where nobody orders, in order where somebody does, and nothing else moved. */
class LaterWeightTest {
    private static final int DRAWS = 20_000;

    /** By hand: of n + 1 weights drawn evenly, one lies below w in 1 - (1 - w)^n of draws. */
    @Test
    void withoutAnOrderItIsOneOfSoManyEvenWeights() {
        WeightTable all = beside(7, new int[7], 0);
        for (double most : new double[] {0.02, 0.1, 0.25, 0.5}) {
            double below =
                    Arrays.stream(all.rows()).filter(row -> row[7] < most).count() / (double) DRAWS;
            assertEquals(1 - Math.pow(1 - most, 7), below, 0.01);
        }
        for (double mean : all.means()) {
            assertEquals(1.0 / 8, mean, 0.003);
        }
    }

    /** By hand: of two even weights the larger is three quarters in the mean. */
    @Test
    void ofTwoInOrderTheFirstHasThreeQuarters() {
        assertEquals(0.25, beside(1, new int[] {0}, 1).means()[1], 0.003);
        assertEquals(0.75, beside(1, new int[] {1}, 0).means()[1], 0.003);
    }

    @Test
    void theOrderIsKeptAndTheOthersStandToOneAnotherAsBefore() {
        int[] groups = {0, 0, 1, 2, 2};
        WeightTable others = WeightDraws.open(5).inOrder(groups).table(500, 1);
        WeightTable all = new LaterWeight(groups, 1).beside(others, 2);
        for (int draw = 0; draw < 500; draw++) {
            double[] before = others.rows()[draw];
            double[] row = all.rows()[draw];
            assertEquals(1, Arrays.stream(row).sum(), 1e-12);
            assertTrue(row[5] <= Math.min(row[0], row[1]) + 1e-12);
            assertTrue(row[5] >= Math.max(row[3], row[4]) - 1e-12);
            for (int j = 0; j < 5; j++) {
                assertEquals(before[j], row[j] / (1 - row[5]), 1e-12);
            }
        }
    }

    private static WeightTable beside(int criteria, int[] groups, int group) {
        WeightTable others = WeightDraws.open(criteria).inOrder(groups).table(DRAWS, 1);
        return new LaterWeight(groups, group).beside(others, 2);
    }
}
