package org.tunica.firmness;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Draws of weights, evenly over all that sum to 1 and agree with what is preferred. An order of importance is kept by
 * handing out the sorted weights, bounds by drawing again. Immutable.
 */
final class WeightDraws {
    private static final int MOST_TRIES = 100_000;

    /** For each criterion the group it belongs to; a criterion of a smaller group never weighs less. */
    private final int[] group;

    /** Criteria by group, the most important first. */
    private final int[] byGroup;

    private final double[] low;
    private final double[] high;
    private final boolean bounded;

    private WeightDraws(int[] group, double[] low, double[] high) {
        this.group = group;
        this.low = low;
        this.high = high;
        this.bounded = !Arrays.equals(low, new double[low.length])
                || Arrays.stream(high).anyMatch(most -> most < 1);
        this.byGroup = IntStream.range(0, group.length)
                .boxed()
                .sorted((a, b) -> Integer.compare(group[a], group[b]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Nobody says that one criterion matters more than another. */
    static WeightDraws open(int criteria) {
        if (criteria < 1) {
            throw new IllegalArgumentException("criteria must be 1 or more, got " + criteria);
        }
        double[] ones = new double[criteria];
        Arrays.fill(ones, 1);
        return new WeightDraws(new int[criteria], new double[criteria], ones);
    }

    /**
     * The same with an order of importance.
     *
     * @param groups for each criterion its group; those of group 0 weigh at least as much as those of group 1, and so on
     */
    WeightDraws inOrder(int... groups) {
        same("groups", groups.length);
        return checked(new WeightDraws(groups.clone(), low, high));
    }

    /**
     * The same with bounds for each weight.
     *
     * @throws IllegalArgumentException when no weights, or next to none, keep them
     */
    WeightDraws within(double[] least, double[] most) {
        same("least", least.length);
        same("most", most.length);
        return checked(new WeightDraws(group, least.clone(), most.clone()));
    }

    private void same(String name, int length) {
        if (length != group.length) {
            throw new IllegalArgumentException(name + " must have " + group.length + " entries, has " + length);
        }
    }

    private static WeightDraws checked(WeightDraws draws) {
        draws.fill(new SplittableRandom(1), new double[draws.group.length], new double[draws.group.length]);
        return draws;
    }

    /** A table of draws; the same seed gives the same. */
    WeightTable table(int draws, long seed) {
        if (draws < 1) {
            throw new IllegalArgumentException("draws must be 1 or more, got " + draws);
        }
        SplittableRandom random = new SplittableRandom(seed);
        double[][] rows = new double[draws][group.length];
        double[] scratch = new double[group.length];
        for (double[] row : rows) {
            fill(random, row, scratch);
        }
        return new WeightTable(group.length, rows);
    }

    /** Number of criteria. */
    int criteria() {
        return group.length;
    }

    /** Fills in weights that sum to 1; {@code scratch} is as long and is overwritten. */
    void fill(SplittableRandom random, double[] weights, double[] scratch) {
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            simplex(random, weights);
            sort(weights, scratch);
            if (!bounded || keepsBounds(weights)) {
                return;
            }
        }
        throw new IllegalArgumentException("no weights keep the bounds " + Arrays.toString(low) + " to "
                + Arrays.toString(high) + " in the order " + Arrays.toString(group));
    }

    /** Normalised exponential deviates are even over the simplex. The strict logarithm is the same on every machine. */
    private static void simplex(SplittableRandom random, double[] weights) {
        double sum = 0;
        for (int j = 0; j < weights.length; j++) {
            weights[j] = -StrictMath.log(1 - random.nextDouble());
            sum += weights[j];
        }
        for (int j = 0; j < weights.length; j++) {
            weights[j] /= sum;
        }
    }

    /** The largest weights go to the first group, in the order drawn within it. */
    private void sort(double[] weights, double[] scratch) {
        int n = weights.length;
        if (group[byGroup[0]] == group[byGroup[n - 1]]) {
            return;
        }
        System.arraycopy(weights, 0, scratch, 0, n);
        Arrays.sort(scratch);
        for (int from = 0; from < n; ) {
            int to = from + 1;
            while (to < n && group[byGroup[to]] == group[byGroup[from]]) {
                to++;
            }
            handOut(weights, scratch, from, to);
            from = to;
        }
    }

    private void handOut(double[] weights, double[] rising, int from, int to) {
        int n = weights.length;
        int[] members = Arrays.copyOfRange(byGroup, from, to);
        for (int i = 1; i < members.length; i++) {
            for (int k = i; k > 0 && weights[members[k]] > weights[members[k - 1]]; k--) {
                int swapped = members[k];
                members[k] = members[k - 1];
                members[k - 1] = swapped;
            }
        }
        for (int i = 0; i < members.length; i++) {
            weights[members[i]] = rising[n - 1 - from - i];
        }
    }

    private boolean keepsBounds(double[] weights) {
        for (int j = 0; j < weights.length; j++) {
            if (weights[j] < low[j] || weights[j] > high[j]) {
                return false;
            }
        }
        return true;
    }
}
