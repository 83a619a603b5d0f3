package org.tunica.statistics;

import org.hipparchus.stat.interval.BinomialProportion;
import org.hipparchus.stat.interval.ConfidenceInterval;

/**
 * A share of cases with its limits by Wilson's score method (Newcombe, Stat Med 1998;17:857-872), which stay within 0 and 1
 * and say something also where no case or every case had the event.
 *
 * @param events how many had it
 * @param total of how many
 * @param confidenceShare how often such limits hold the true share, such as 0.95
 * @param lowShare lower limit
 * @param highShare upper limit
 */
public record WilsonInterval(int events, int total, double confidenceShare, double lowShare, double highShare) {

    /** @throws IllegalArgumentException without any case, or with more events than cases */
    public static WilsonInterval of(int events, int total, double confidenceShare) {
        Checked.atLeast("total", total, 1);
        Checked.within("events", events, 0, total);
        Checked.properShare("confidenceShare", confidenceShare);
        ConfidenceInterval found =
                BinomialProportion.getWilsonScoreInterval(total, (double) events / total, confidenceShare);
        // no case and every case have their own share as a limit; the library leaves a rounding error there
        double low = events == 0 ? 0 : found.getLowerBound();
        double high = events == total ? 1 : found.getUpperBound();
        return new WilsonInterval(events, total, confidenceShare, low, high);
    }

    /** The share itself. */
    public double share() {
        return (double) events / total;
    }
}
