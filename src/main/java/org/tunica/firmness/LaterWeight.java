package org.tunica.firmness;

import java.util.SplittableRandom;

/**
 * The weight of one more criterion beside weights that are drawn already. It takes a share of the whole and leaves the others
 * as they stand to one another, so that a criterion by which all options are alike changes no rank, to the last draw. Of n
 * weights drawn evenly, one has the density (1 - w)^(n - 2) up to a constant (Beta(1, n - 1)); it is drawn from that, between
 * the bounds which the order of importance sets it.
 */
final class LaterWeight {
    private final int[] groups;
    private final int group;

    /**
     * @param groups of the criteria drawn already, as in {@link WeightDraws#inOrder}
     * @param group of the one more
     */
    LaterWeight(int[] groups, int group) {
        this.groups = groups.clone();
        this.group = group;
    }

    /** The table with the one more behind the others; the same seed gives the same. */
    WeightTable beside(WeightTable others, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[][] rows = new double[others.draws()][];
        for (int draw = 0; draw < rows.length; draw++) {
            rows[draw] = beside(others.rows()[draw], random.nextDouble());
        }
        return new WeightTable(others.criteria() + 1, rows);
    }

    private double[] beside(double[] others, double chance) {
        double least = 0;
        double most = 1;
        for (int j = 0; j < others.length; j++) {
            double even = others[j] / (1 + others[j]); // the weight at which the two are alike
            least = groups[j] > group ? Math.max(least, even) : least;
            most = groups[j] < group ? Math.min(most, even) : most;
        }
        double weight = between(least, most, chance, others.length);
        double[] all = new double[others.length + 1];
        for (int j = 0; j < others.length; j++) {
            all[j] = (1 - weight) * others[j];
        }
        all[others.length] = weight;
        return all;
    }

    /** Inverts the distribution 1 - (1 - w)^n between two bounds. */
    private static double between(double least, double most, double chance, int n) {
        double above = StrictMath.pow(1 - least, n);
        double below = StrictMath.pow(1 - most, n);
        return 1 - StrictMath.pow(above - chance * (above - below), 1.0 / n);
    }
}
