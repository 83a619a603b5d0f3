package org.tunica.statistics;

import org.hipparchus.distribution.discrete.HypergeometricDistribution;

/**
 * Whether the shares of two groups differ more than chance explains: Fisher's exact test, two-sided. Of all tables with the
 * same sums, those that are at most as probable as the one seen are counted (Fisher, The Design of Experiments, 1935, for the
 * test; the two-sided rule is the customary one). Exact for any size, and rather too careful than not in small groups.
 *
 * @param first the first group
 * @param second the second group
 * @param chanceProbability how often chance alone makes a difference at least as large
 */
public record SharesApart(Counted first, Counted second, double chanceProbability) {
    /** Two tables count as equally probable when they differ by rounding alone. */
    private static final double ROUNDING = 1 + 1e-7;

    /**
     * A group.
     *
     * @param events how many of it
     * @param total its size
     */
    public record Counted(int events, int total) {
        public Counted {
            Checked.atLeast("total", total, 1);
            Checked.within("events", events, 0, total);
        }

        /** The share of events. */
        public double share() {
            return (double) events / total;
        }
    }

    /** The comparison. */
    public static SharesApart of(Counted first, Counted second) {
        int events = first.events() + second.events();
        int all = first.total() + second.total();
        HypergeometricDistribution chance = new HypergeometricDistribution(all, events, first.total());
        double seen = chance.probability(first.events()) * ROUNDING;
        double sum = 0;
        for (int k = Math.max(0, events - second.total()); k <= Math.min(events, first.total()); k++) {
            double probability = chance.probability(k);
            sum += probability <= seen ? probability : 0;
        }
        return new SharesApart(first, second, Math.min(1, sum));
    }

    /** How much larger the first share is than the second, -1 to 1. */
    public double differenceShare() {
        return first.share() - second.share();
    }
}
