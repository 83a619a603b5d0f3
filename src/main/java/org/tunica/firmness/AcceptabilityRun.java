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
    private final CriteriaDraws values;
    private final WeightTable weights;
    private final int draws;
    private final long seed;
    private final int options;
    private final int criteria;
    private final double[] worth;
    private final int[] tiers;
    private final double[] drawn;

    private AcceptabilityRun(CriteriaDraws values, WeightTable weights, long seed) {
        if (values.criteria() != weights.criteria()) {
            throw new IllegalArgumentException(
                    values.criteria() + " criteria have values, " + weights.criteria() + " have weights");
        }
        this.values = values;
        this.weights = weights;
        this.draws = weights.draws();
        this.seed = seed;
        this.options = values.options();
        this.criteria = values.criteria();
        this.worth = new double[options];
        this.tiers = new int[options];
        this.drawn = new double[options * criteria];
    }

    /** The shares over the draws of a table of weights; the same seed gives the same. */
    static Acceptability of(CriteriaDraws values, WeightTable weights, long seed) {
        return new AcceptabilityRun(values, weights, seed).run();
    }

    private Acceptability run() {
        long[] ranks = new long[options * options];
        long[] wins = new long[options * options];
        double[] central = new double[options * criteria];
        int[] place = new int[options];
        SplittableRandom chance = new SplittableRandom(seed);
        for (int draw = 0; draw < draws; draw++) {
            values.fill(draw, chance, drawn, tiers);
            double[] weight = weights.rows()[draw];
            for (int i = 0; i < options; i++) {
                worth[i] = worth(i, weight, 0);
            }
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

    private double worth(int option, double[] weight, int from) {
        double sum = 0;
        for (int j = 0; j < criteria; j++) {
            sum += weight[from + j] * drawn[option * criteria + j];
        }
        return sum;
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
            int best = best();
            for (int i = 0; i < options; i++) {
                if (tiers[i] == best && first(i, best, means, draw)) {
                    confirmed[i]++;
                }
            }
        }
        return confirmed;
    }

    private int best() {
        int best = tiers[0];
        for (int tier : tiers) {
            best = Math.min(best, tier);
        }
        return best;
    }

    /** Only options of the best tier can come in its way. */
    private boolean first(int option, int best, double[] means, int draw) {
        worth[option] = worth(option, means, option * criteria);
        for (int k = 0; k < options; k++) {
            if (k != option && tiers[k] == best) {
                worth[k] = worth(k, means, option * criteria);
                if (!before(option, k, draw)) {
                    return false;
                }
            }
        }
        return true;
    }
}
