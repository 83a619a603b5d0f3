package org.tunica.statistics;

/**
 * What a chart watches for and when it speaks.
 *
 * @param worseOddsRatio by how much the odds of failure would be multiplied, greater than 1
 * @param betterOddsRatio likewise for better results, less than 1
 * @param worseLimit value at which the chart of worse results signals, greater than 0; see {@link CusumLimit}
 * @param betterLimit likewise for better results, greater than 0; drawn downwards
 */
public record CusumDesign(double worseOddsRatio, double betterOddsRatio, double worseLimit, double betterLimit) {
    public CusumDesign {
        Checked.positive("betterOddsRatio", betterOddsRatio);
        if (!(worseOddsRatio > 1) || !(betterOddsRatio < 1)) {
            throw new IllegalArgumentException("worseOddsRatio must be greater than 1 and betterOddsRatio less, got "
                    + worseOddsRatio + " and " + betterOddsRatio);
        }
        Checked.positive("worseOddsRatio", worseOddsRatio);
        Checked.positive("worseLimit", worseLimit);
        Checked.positive("betterLimit", betterLimit);
    }
}
