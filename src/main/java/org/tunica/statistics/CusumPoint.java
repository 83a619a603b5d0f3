package org.tunica.statistics;

import java.util.List;

/**
 * The charts after one case.
 *
 * @param caseNumber counted from 1
 * @param outcome what was predicted and what came
 * @param worse value of the chart of worse results, 0 or greater
 * @param better value of the chart of better results, 0 or less
 * @param signals what was reached here; the chart concerned starts again from 0 with the next case
 */
public record CusumPoint(
        int caseNumber, RiskedOutcome outcome, double worse, double better, List<CusumSignal> signals) {
    public CusumPoint {
        signals = List.copyOf(signals);
    }
}
