package org.tunica.firmness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Known answers of stochastic multicriteria acceptability analysis. */
class PublishedCasesTest {
    private static final int DRAWS = 10_000;
    private static final double HALF_WIDTH = 0.01;
    private static final long SEED = 7;

    /** Three quarters by hand: A comes first unless the second weight is more than a half. */
    @Test
    void twoOptionsThreeCriteria() {
        Acceptability found = run(new FixedValues(2, 3, 1, 0, 1, 0, 1, 0), WeightDraws.open(3));
        assertEquals(0.75, found.firstShare(0), HALF_WIDTH);
        assertEquals(0.25, found.firstShare(1), HALF_WIDTH);
        weights(found, 0, HALF_WIDTH, 7.0 / 18, 2.0 / 9, 7.0 / 18);
        weights(found, 1, HALF_WIDTH, 1.0 / 6, 2.0 / 3, 1.0 / 6);
    }

    /** By hand: the largest of three even weights is 11/18 in the mean. */
    @Test
    void eachOptionBestInOneCriterion() {
        Acceptability found = run(new FixedValues(3, 3, 1, 0, 0, 0, 1, 0, 0, 0, 1), WeightDraws.open(3));
        for (int i = 0; i < 3; i++) {
            assertEquals(1.0 / 3, found.firstShare(i), HALF_WIDTH);
            for (int j = 0; j < 3; j++) {
                assertEquals(
                        i == j ? 11.0 / 18 : 7.0 / 36, found.centralWeights(i).orElseThrow()[j], HALF_WIDTH);
            }
        }
    }

    /** What the tests of the package smaa for R ask: an option that never comes first has no central weights. */
    @Test
    void oneOptionWorseInEverything() {
        Acceptability found = run(new FixedValues(2, 3, 1, 1, 1, 0, 0, 0), WeightDraws.open(3));
        assertEquals(1, found.firstShare(0));
        weights(found, 0, HALF_WIDTH, 1.0 / 3, 1.0 / 3, 1.0 / 3);
        assertTrue(found.centralWeights(1).isEmpty());
        assertTrue(found.confidence(1).isEmpty());
        assertEquals(1, found.confidence(0).orElseThrow());
    }

    /** Two treatments with Beta rates of three harms; 0.338 and 0.350 in tests of public packages, 0.341 recomputed. */
    @Test
    void twoTreatmentsWithThreeHarms() {
        Acceptability found = run(new Harms(), WeightDraws.open(3));
        assertEquals(0.341, found.firstShare(0), 0.02);
        assertEquals(0.659, found.firstShare(1), 0.02);
        assertEquals(0.645, found.confidence(0).orElseThrow(), 0.02);
        assertEquals(0.89, found.confidence(1).orElseThrow(), 0.02);
        weights(found, 0, 0.02, 0.193, 0.276, 0.531);
        weights(found, 1, 0.02, 0.407, 0.364, 0.230);
    }

    /** The same with the first harm before the third before the second; 0.1369 in the test of a public package. */
    @Test
    void theSameWithAnOrderOfImportance() {
        Acceptability found = run(new Harms(), WeightDraws.open(3).inOrder(0, 2, 1));
        assertEquals(0.1369, found.firstShare(0), 0.02);
        assertEquals(0.8631, found.firstShare(1), 0.02);
    }

    /** The same with exact weights; 0.1049 in the test of a public package. The bounds leave them half a percent. */
    @Test
    void theSameWithWeightsAsGoodAsFixed() {
        double[] w = {4.0 / 7, 1.0 / 7, 2.0 / 7};
        double narrow = 0.01;
        WeightDraws fixed = WeightDraws.open(3)
                .within(
                        new double[] {w[0] - narrow, w[1] - narrow, w[2] - narrow},
                        new double[] {w[0] + narrow, w[1] + narrow, w[2] + narrow});
        Acceptability found = run(new Harms(), fixed);
        assertEquals(0.1049, found.firstShare(0), 0.02);
        assertEquals(0.8951, found.firstShare(1), 0.02);
    }

    /** Four drugs by one gain and five harms: data and answers of SMAA2SimulationTest in the public package jsmaa. */
    @Test
    void fourDrugsSixCriteria() {
        Acceptability found = run(new FourDrugs(), WeightDraws.open(6));
        double[][] shares = {
            {0.20, 0.28, 0.30, 0.22}, {0.25, 0.29, 0.27, 0.19}, {0.17, 0.25, 0.29, 0.30}, {0.39, 0.18, 0.15, 0.29}
        };
        double[] confidence = {0.48, 0.44, 0.34, 0.74};
        for (int i = 0; i < 4; i++) {
            for (int rank = 0; rank < 4; rank++) {
                assertEquals(shares[i][rank], found.share(i, rank), 0.02, i + " at " + rank);
            }
            assertEquals(confidence[i], found.confidence(i).orElseThrow(), 0.03, "confidence of " + i);
        }
        weights(found, 0, 0.02, 0.08, 0.14, 0.23, 0.18, 0.16, 0.22);
        weights(found, 3, 0.02, 0.18, 0.21, 0.12, 0.21, 0.19, 0.09);
    }

    private static Acceptability run(CriteriaDraws values, WeightDraws weights) {
        return AcceptabilityRun.of(values, weights.table(DRAWS, SEED + 1), SEED);
    }

    private static void weights(Acceptability found, int option, double within, double... expected) {
        double[] weights = found.centralWeights(option).orElseThrow();
        for (int j = 0; j < expected.length; j++) {
            assertEquals(expected[j], weights[j], within, "weight " + j + " of option " + option);
        }
    }

    /** Rates drawn from Beta(20,116), (40,96), (1,135) against (8,121), (32,97), (5,124); less harm is worth more. */
    private static final class Harms implements CriteriaDraws {
        private static final double[][] BETA = {{20, 116}, {40, 96}, {1, 135}, {8, 121}, {32, 97}, {5, 124}};
        private static final double[][] SCALE = {{0, 0.25}, {0.15, 0.4}, {0, 0.1}};
        private final Quantiles[] rates = new Quantiles[BETA.length];

        Harms() {
            for (int i = 0; i < rates.length; i++) {
                rates[i] = Quantiles.of(Quantiles.beta(BETA[i][0] - 1, BETA[i][1] - 1));
            }
        }

        @Override
        public int options() {
            return 2;
        }

        @Override
        public int criteria() {
            return 3;
        }

        @Override
        public void fill(int draw, SplittableRandom random, double[] values, int[] tiers) {
            for (int at = 0; at < values.length; at++) {
                double[] scale = SCALE[at % 3];
                values[at] = (scale[1] - rates[at].at(random.nextDouble())) / (scale[1] - scale[0]);
            }
        }
    }

    private static final class FourDrugs implements CriteriaDraws {
        private static final double[][] MEANS = {
            {0, 11.7, 7.2, 16.6, 13.7, 18.6},
            {0.086, 9.2, 10.6, 21.2, 14.3, 18.3},
            {0.095, 15.4, 7.5, 20.2, 15.0, 19.5},
            {0.113, 5.5, 15.7, 12.8, 11.2, 31.0}
        };
        private static final double[][] DEVIATIONS = {
            {0, 2.5, 1.45, 3.27, 1.89, 1.79},
            {0.056, 1.86, 1.58, 5.15, 2.93, 3.7},
            {0.044, 2.65, 1.48, 3.78, 3.21, 2.6},
            {0.048, 2.32, 4.44, 2.45, 3.98, 1.68}
        };
        private static final double REACH = 1.96;
        private final double[] low = new double[6];
        private final double[] high = new double[6];

        /** The scales are the hull of all 95 % intervals. */
        FourDrugs() {
            for (int j = 0; j < 6; j++) {
                low[j] = Double.MAX_VALUE;
                high[j] = -Double.MAX_VALUE;
                for (int i = 0; i < 4; i++) {
                    low[j] = Math.min(low[j], scale(j).applyAsDouble(MEANS[i][j] - REACH * DEVIATIONS[i][j]));
                    high[j] = Math.max(high[j], scale(j).applyAsDouble(MEANS[i][j] + REACH * DEVIATIONS[i][j]));
                }
            }
        }

        private static DoubleUnaryOperator scale(int criterion) {
            return criterion == 0 ? StrictMath::exp : DoubleUnaryOperator.identity();
        }

        @Override
        public int options() {
            return 4;
        }

        @Override
        public int criteria() {
            return 6;
        }

        @Override
        public void fill(int draw, SplittableRandom random, double[] values, int[] tiers) {
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 6; j++) {
                    double drawn = scale(j).applyAsDouble(MEANS[i][j] + DEVIATIONS[i][j] * random.nextGaussian());
                    double up = (drawn - low[j]) / (high[j] - low[j]);
                    values[i * 6 + j] = j == 0 ? up : 1 - up;
                }
            }
        }
    }
}
