package org.tunica.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Turns the ends of the fits of one bench file into a report. */
final class ReportWriter {
    private static final double EDGE_SHARE = 0.01;
    private static final double SAME_PLACE_SHARE = 0.05;

    private final BenchFile bench;
    private final List<FreeConstant> free;
    private final BenchPrediction prediction;
    private final BoundedFit problem;

    ReportWriter(BenchFile bench, List<FreeConstant> free, BenchPrediction prediction, BoundedFit problem) {
        this.bench = bench;
        this.free = free;
        this.prediction = prediction;
        this.problem = problem;
    }

    CalibrationReport report(List<BoundedFit.Rest> rests) {
        BoundedFit.Rest best = rests.stream()
                .min(Comparator.comparingDouble(BoundedFit.Rest::sumOfSquares))
                .orElseThrow();
        List<CalibrationReport.RowFit> rows = rows(best.shares());
        int freedom = freedom();
        Sureness sureness = new Sureness(problem.slopes(best.shares()), variance(best, freedom), freedom);
        List<CalibrationReport.Correlation> correlations = correlations(sureness);
        return new CalibrationReport(
                bench,
                rows,
                fit(rows, CalibrationReport.RowFit::before),
                fit(rows, CalibrationReport.RowFit::after),
                freedom,
                sureness.condition(),
                best.settled(),
                rests.size(),
                (int) rests.stream().filter(rest -> samePlace(rest, best)).count(),
                constants(best.shares(), sureness),
                correlations,
                together(correlations, sureness));
    }

    private List<CalibrationReport.RowFit> rows(double[] shares) {
        List<HeatRun> before =
                prediction.runs(free.stream().mapToDouble(FreeConstant::share).toArray());
        List<HeatRun> after = prediction.runs(shares);
        return IntStream.range(0, bench.rows().size())
                .mapToObj(i -> new CalibrationReport.RowFit(bench.rows().get(i), before.get(i), after.get(i)))
                .toList();
    }

    /** A wall dead through and through that the model kills too counts no depth: it pulls at nothing. */
    private int freedom() {
        return (int) bench.depthsInsideTheWall() - free.size();
    }

    /** Stated deviations are taken at their word, yet never as better than the scatter of the fit shows. */
    private double variance(BoundedFit.Rest best, int freedom) {
        double scatter = best.sumOfSquares() / freedom;
        return bench.withDeviations() ? Math.max(1, scatter) : scatter;
    }

    private static boolean samePlace(BoundedFit.Rest rest, BoundedFit.Rest best) {
        return IntStream.range(0, best.shares().length)
                .allMatch(j -> Math.abs(rest.shares()[j] - best.shares()[j]) < SAME_PLACE_SHARE);
    }

    private List<CalibrationReport.Fitted> constants(double[] shares, Sureness sureness) {
        return IntStream.range(0, free.size())
                .mapToObj(j -> fitted(free.get(j), shares[j], sureness.standardError(j), sureness.halfWidth(j)))
                .toList();
    }

    private static CalibrationReport.Fitted fitted(
            FreeConstant constant, double share, double errorShare, double halfWidthShare) {
        Optional<CalibrationReport.Spread> spread = Double.isInfinite(errorShare)
                ? Optional.empty()
                : Optional.of(new CalibrationReport.Spread(
                        errorShare * constant.perShare(share),
                        constant.at(share - halfWidthShare),
                        constant.at(share + halfWidthShare)));
        return new CalibrationReport.Fitted(
                constant.id(),
                constant.value(),
                constant.low(),
                constant.high(),
                constant.at(share),
                spread,
                share < EDGE_SHARE || share > 1 - EDGE_SHARE);
    }

    private List<CalibrationReport.Correlation> correlations(Sureness sureness) {
        List<CalibrationReport.Correlation> pairs = new ArrayList<>();
        for (int j = 0; j < free.size(); j++) {
            for (int k = j + 1; k < free.size(); k++) {
                double correlation = sureness.correlation(j, k);
                pairs.add(new CalibrationReport.Correlation(
                        free.get(j).id(),
                        free.get(k).id(),
                        Double.isNaN(correlation) ? OptionalDouble.empty() : OptionalDouble.of(correlation)));
            }
        }
        return pairs;
    }

    private List<CalibrationReport.Together> together(
            List<CalibrationReport.Correlation> correlations, Sureness sureness) {
        List<CalibrationReport.Together> groups = new ArrayList<>();
        correlations.stream()
                .filter(pair -> pair.beyond(CalibrationReport.TOLD_APART_BELOW))
                .forEach(pair -> groups.add(
                        new CalibrationReport.Together(List.of(pair.id(), pair.other()), pair.correlation())));
        sureness.unfixedTogether()
                .forEach(members -> groups.add(new CalibrationReport.Together(
                        members.stream().map(j -> free.get(j).id()).toList(), OptionalDouble.empty())));
        return groups;
    }

    private CalibrationReport.Fit fit(
            List<CalibrationReport.RowFit> rows, Function<CalibrationReport.RowFit, HeatRun> which) {
        double squares = 0;
        double weighed = 0;
        int missed = 0;
        int invented = 0;
        for (CalibrationReport.RowFit fit : rows) {
            HeatRun run = which.apply(fit);
            for (BenchRow.Off off : fit.row().offs(run)) {
                squares += off.mm() * off.mm();
                weighed += off.weighed() * off.weighed();
            }
            missed += fit.row().charSeen().filter(seen -> seen && !run.chars()).isPresent() ? 1 : 0;
            invented +=
                    fit.row().charSeen().filter(seen -> !seen && run.chars()).isPresent() ? 1 : 0;
        }
        return new CalibrationReport.Fit(
                Math.sqrt(squares / bench.depths()),
                bench.withDeviations()
                        ? OptionalDouble.of(Math.sqrt(weighed / bench.depths()))
                        : OptionalDouble.empty(),
                (int) rows.stream()
                        .filter(fit -> fit.row().charSeen().isPresent())
                        .count(),
                missed,
                invented);
    }
}
