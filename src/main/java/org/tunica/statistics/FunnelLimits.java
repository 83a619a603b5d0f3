package org.tunica.statistics;

import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * How many events chance alone allows a group of some size: no more than half of what is left over lies beyond either limit, by
 * the binomial distribution itself and not by its normal approximation.
 *
 * @param chanceShare how often a group that runs the target share lies within, or more often: 0.95 or 0.998
 * @param total size of the group
 * @param lowEvents fewest events within
 * @param highEvents most events within
 */
public record FunnelLimits(double chanceShare, int total, int lowEvents, int highEvents) {

    static FunnelLimits of(double targetShare, int total, double chanceShare) {
        BinomialDistribution events = new BinomialDistribution(total, targetShare);
        double beyond = (1 - chanceShare) / 2;
        return new FunnelLimits(
                chanceShare,
                total,
                events.inverseCumulativeProbability(beyond),
                events.inverseCumulativeProbability(1 - beyond));
    }

    /** Lower limit as a share. */
    public double lowShare() {
        return (double) lowEvents / total;
    }

    /** Upper limit as a share. */
    public double highShare() {
        return (double) highEvents / total;
    }
}
