package org.tunica.statistics;

/**
 * One case of a chart: what was to be expected and what came.
 *
 * @param failureProbability chance of failure predicted from what was known before, greater than 0 and less than 1
 * @param failed whether it failed
 */
public record RiskedOutcome(double failureProbability, boolean failed) {
    public RiskedOutcome {
        Checked.properShare("failureProbability", failureProbability);
    }
}
