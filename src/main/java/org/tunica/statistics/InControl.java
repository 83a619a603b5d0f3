package org.tunica.statistics;

import java.util.List;

/**
 * Runs of cases whose results are as predicted.
 *
 * @param failureProbabilities the mix of cases: one of these is drawn for each, all alike
 * @param runs how many runs, at least 100
 * @param seed same seed, same runs
 */
public record InControl(List<Double> failureProbabilities, int runs, long seed) {
    private static final int LEAST_RUNS = 100;

    public InControl {
        failureProbabilities = List.copyOf(failureProbabilities);
        Checked.atLeast("runs", runs, LEAST_RUNS);
        Checked.atLeast("failureProbabilities", failureProbabilities.size(), 1);
        failureProbabilities.forEach(chance -> Checked.properShare("failureProbabilities", chance));
    }
}
