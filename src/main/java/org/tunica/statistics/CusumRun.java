package org.tunica.statistics;

import java.util.Optional;

/** One side of a chart on its way through the cases: S = max(0, S + W), started again after a signal. */
final class CusumRun {
    private final CusumSide side;
    private final CusumWeight weight;
    private final double limit;
    private double score;
    private int since = 1;
    private boolean restarts;

    CusumRun(CusumSide side, double oddsRatio, double limit) {
        this.side = side;
        this.weight = new CusumWeight(oddsRatio);
        this.limit = limit;
    }

    Optional<CusumSignal> take(int caseNumber, RiskedOutcome outcome) {
        if (restarts || score == 0) {
            score = 0;
            since = caseNumber;
        }
        score = Math.max(0, score + weight.of(outcome.failureProbability(), outcome.failed()));
        restarts = score >= limit;
        return restarts ? Optional.of(new CusumSignal(side, caseNumber, since)) : Optional.empty();
    }

    double score() {
        return score;
    }
}
