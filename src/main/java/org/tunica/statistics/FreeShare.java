package org.tunica.statistics;

import java.util.OptionalDouble;

/**
 * The share of cases still free of the event at some time.
 *
 * @param freeShare the estimate
 * @param standardErrorShare its standard error (Greenwood), empty at 1 and at 0, where the formula would claim certainty
 * @param lowShare lower limit on the log-log scale, empty where that scale has none: at 1 and at 0
 * @param highShare upper limit, empty likewise
 */
public record FreeShare(
        double freeShare, OptionalDouble standardErrorShare, OptionalDouble lowShare, OptionalDouble highShare) {
    static final FreeShare ALL = unsure(1);

    /**
     * Limits exp(-exp(log(-log S) +- z se / (S |log S|))), the complementary log-log transform of Kalbfleisch and Prentice.
     *
     * @param share S
     * @param greenwoodSum sum over the steps of d / (n (n - d)), where n were at risk and d had the event
     * @param deviations z
     */
    static FreeShare of(double share, double greenwoodSum, double deviations) {
        if (share >= 1) {
            return ALL;
        }
        if (share <= 0) {
            return unsure(0);
        }
        double error = Math.sqrt(greenwoodSum);
        double spread = Math.exp(deviations * error / Math.abs(Math.log(share)));
        return new FreeShare(
                share,
                OptionalDouble.of(share * error),
                OptionalDouble.of(Math.pow(share, spread)),
                OptionalDouble.of(Math.pow(share, 1 / spread)));
    }

    private static FreeShare unsure(double share) {
        return new FreeShare(share, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
}
