package org.tunica.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Risk-adjusted CUSUM of outcomes (Steiner, Cook, Farewell, Treasure, Biostatistics 2000;1(4):441-452): case by case the
 * evidence piles up that results are worse, or better, than predicted for these very patients. A signal asks for a look at the
 * cases, it blames nobody; what is predicted may be wrong as well.
 *
 * @param design what is watched for
 * @param points the charts after each case, in the order of the cases
 */
public record OutcomeCusum(CusumDesign design, List<CusumPoint> points) {
    public OutcomeCusum {
        points = List.copyOf(points);
    }

    /** @param outcomes in the order in which they became known */
    public static OutcomeCusum of(List<RiskedOutcome> outcomes, CusumDesign design) {
        CusumRun worse = new CusumRun(CusumSide.WORSE, design.worseOddsRatio(), design.worseLimit());
        CusumRun better = new CusumRun(CusumSide.BETTER, design.betterOddsRatio(), design.betterLimit());
        List<CusumPoint> points = new ArrayList<>();
        for (RiskedOutcome outcome : outcomes) {
            int number = points.size() + 1;
            List<CusumSignal> signals = Stream.of(worse.take(number, outcome), better.take(number, outcome))
                    .flatMap(Optional::stream)
                    .toList();
            // 0 - x and not -x, which would write a chart at rest as minus nothing
            points.add(new CusumPoint(number, outcome, worse.score(), 0 - better.score(), signals));
        }
        return new OutcomeCusum(design, points);
    }

    /** Everything signalled, in order: with the restarts after each this is the log of resets. */
    public List<CusumSignal> signals() {
        return points.stream().flatMap(point -> point.signals().stream()).toList();
    }

    /** Failures seen. */
    public int failures() {
        return (int) points.stream().filter(point -> point.outcome().failed()).count();
    }

    /** Failures predicted: the sum of the chances. */
    public double predictedFailures() {
        return points.stream()
                .mapToDouble(point -> point.outcome().failureProbability())
                .sum();
    }
}
