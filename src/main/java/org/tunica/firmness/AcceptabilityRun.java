package org.tunica.firmness;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Runs the draws of SMAA-2 over flat arrays (algorithm: Tervonen and Lahdelma, Eur J Oper Res 2007;178:500-513). Values and
 * weights have generators of their own, so that the same weights meet the same chance whatever the values. In each draw an
 * option goes before another by its tier, then by its worth, and of two that are even, by a turn that moves on with every
 * draw, so that no name is favoured.
 */
final class AcceptabilityRun {
    private static final long WEIGHTS = 0x5DEECE66DL;

    private final CriteriaDraws values;
    private final WeightDraws weights;
    private final int draws;
    private final long seed;
    private final int options;
    private final int criteria;
    private final double[] worth;
    private final int[] tiers;
    private final double[] drawn;

    private AcceptabilityRun(CriteriaDraws values, WeightDraws weights, int draws, long seed) {
        if (draws < 1) {
            throw new IllegalArgumentException("draws must be 1 or more, got " + draws);
        }
        if (values.criteria() != weights.criteria()) {
            throw new IllegalArgumentException(
                    values.criteria() + " criteria have values, " + weights.criteria() + " have weights");
        }
        this.values = values;
        this.weights = weights;
        this.draws = draws;
        this.seed = seed;
        this.options = values.options();
        this.criteria = values.criteria();
        this.worth = new double[options];
        this.tiers = new int[options];
        this.drawn = new double[options * criteria];
    }

    /** The shares over {@code draws} draws; the same seed gives the same. */
    static Acceptability of(CriteriaDraws values, WeightDraws weights, int draws, long seed) {
        return new AcceptabilityRun(values, weights, draws, seed).run();
    }

    private Acceptability run() {
        long[] ranks = new long[options * options];
        long[] wins = new long[options * options];
        double[] central = new double[options * criteria];
        int[] place = new int[options];
        double[] weight = new double[criteria];
        double[] scratch = new double[criteria];
        SplittableRandom chance = new SplittableRandom(seed);
        SplittableRandom opinion = new SplittableRandom(seed ^ WEIGHTS);
        for (int draw = 0; draw < draws; draw++) {
            values.fill(draw, chance, drawn, tiers);
            weights.fill(opinion, weight, scratch);
            weigh(weight, 0);
            compare(draw, place, wins);
            for (int i = 0; i < options; i++) {
                ranks[i * options + place[i]]++;
                if (place[i] == 0) {
                    add(weight, central, i * criteria);
                }
            }
        }
        return new Acceptability(options, criteria, draws, ranks, wins, central, confirmed(means(ranks, central)));
    }

    private void weigh(double[] weight, int from) {
        for (int i = 0; i < options; i++) {
            double sum = 0;
            for (int j = 0; j < criteria; j++) {
                sum += weight[from + j] * drawn[i * criteria + j];
            }
            worth[i] = sum;
        }
    }

    /** Every pair once; the place of an option is the number of those before it. */
    private void compare(int draw, int[] place, long[] wins) {
        Arrays.fill(place, 0);
        for (int i = 0; i < options; i++) {
            for (int k = i + 1; k < options; k++) {
                if (before(i, k, draw)) {
                    wins[i * options + k]++;
                    place[k]++;
                } else {
                    wins[k * options + i]++;
                    place[i]++;
                }
            }
        }
    }

    private boolean before(int i, int k, int draw) {
        if (tiers[i] != tiers[k]) {
            return tiers[i] < tiers[k];
        }
        if (worth[i] != worth[k]) {
            return worth[i] > worth[k];
        }
        return turn(i, draw) < turn(k, draw);
    }

    private int turn(int option, int draw) {
        return (option + draw) % options;
    }

    private void add(double[] weight, double[] central, int at) {
        for (int j = 0; j < criteria; j++) {
            central[at + j] += weight[j];
        }
    }

    private double[] means(long[] ranks, double[] central) {
        double[] means = new double[central.length];
        for (int i = 0; i < options; i++) {
            for (int j = 0; j < criteria; j++) {
                means[i * criteria + j] = central[i * criteria + j] / Math.max(1, ranks[i * options]);
            }
        }
        return means;
    }

    /** The same values once more, with the central weights of each option in turn. */
    private long[] confirmed(double[] means) {
        long[] confirmed = new long[options];
        SplittableRandom chance = new SplittableRandom(seed);
        for (int draw = 0; draw < draws; draw++) {
            values.fill(draw, chance, drawn, tiers);
            for (int i = 0; i < options; i++) {
                weigh(means, i * criteria);
                if (first(i, draw)) {
                    confirmed[i]++;
                }
            }
        }
        return confirmed;
    }

    private boolean first(int option, int draw) {
        for (int k = 0; k < options; k++) {
            if (k != option && !before(option, k, draw)) {
                return false;
            }
        }
        return true;
    }
}
