package org.tunica.heat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a fit of constants to a bench file went: material for a proposal, nothing to be used.
 *
 * @param rows every row, with what the model said before and says after
 * @param freedom degrees of freedom: depths that count less free constants
 * @param condition 1 when every constant acts in a way of its own, above about 30 when they stand in for each other
 * @param settled whether the fit came to rest
 * @param starts how many starts were tried
 * @param startsAgreeing how many of them ended at the constants reported
 * @param correlations of every pair of constants
 * @param notToldApart groups the data cannot tell apart
 */
public record CalibrationReport(
        BenchFile bench,
        List<RowFit> rows,
        Fit before,
        Fit after,
        int freedom,
        double condition,
        boolean settled,
        int starts,
        int startsAgreeing,
        List<Fitted> constants,
        List<Correlation> correlations,
        List<Together> notToldApart) {

    /** Two constants whose correlation is beyond this are not told apart. */
    public static final double TOLD_APART_BELOW = 0.95;

    public CalibrationReport {
        rows = List.copyOf(rows);
        constants = List.copyOf(constants);
        correlations = List.copyOf(correlations);
        notToldApart = List.copyOf(notToldApart);
    }

    /** One row with the runs of the constants before and after the fit. */
    public record RowFit(BenchRow row, HeatRun before, HeatRun after) {}

    /**
     * How well a set of constants fits.
     *
     * @param rmsMm root of the mean square of the residuals; of all depths alike
     * @param rmsDeviations the same in standard deviations, when those were given
     * @param charLooked rows where somebody looked for char
     * @param charMissed rows with char seen and none computed
     * @param charInvented rows with char computed and none seen
     */
    public record Fit(double rmsMm, OptionalDouble rmsDeviations, int charLooked, int charMissed, int charInvented) {
        /** Rows where computed and seen char agree. */
        public int charAgreed() {
            return charLooked - charMissed - charInvented;
        }
    }

    /**
     * One constant, in the unit of knowledge/.
     *
     * @param before the value in knowledge/
     * @param low lower end of its range there
     * @param high upper end
     * @param value fitted
     * @param spread how surely; empty when the data do not fix it
     * @param atEdge whether it stands at an end of its range
     */
    public record Fitted(
            String id, double before, double low, double high, double value, Optional<Spread> spread, boolean atEdge) {
        /** Whether the data say less about it than its range already does. */
        public boolean tellsLittle() {
            return spread.isEmpty() || spread.get().high95() - spread.get().low95() >= high - low;
        }
    }

    /** Standard error and the ends of the 95 % interval, which may pass those of the range. */
    public record Spread(double standardError, double low95, double high95) {}

    /** Correlation of two constants; empty when the data do not fix one of them. */
    public record Correlation(String id, String other, OptionalDouble correlation) {
        boolean beyond(double limit) {
            return correlation.isPresent() && Math.abs(correlation.getAsDouble()) > limit;
        }
    }

    /** Constants the data cannot tell apart; without a correlation when nothing at all fixes one against the other. */
    public record Together(List<String> ids, OptionalDouble correlation) {
        public Together {
            ids = List.copyOf(ids);
        }
    }

    /** Whether a constant is among those not told apart. */
    public boolean notToldApart(String id) {
        return notToldApart.stream().anyMatch(group -> group.ids().contains(id));
    }
}
