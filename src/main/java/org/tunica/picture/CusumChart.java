package org.tunica.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.tunica.statistics.CusumDesign;
import org.tunica.statistics.CusumPoint;
import org.tunica.statistics.CusumSignal;
import org.tunica.statistics.OutcomeCusum;

/**
 * Results against what was predicted, case by case.
 *
 * @param head what the caller says of it
 * @param failure what counts as a failure, such as "open at the scan of day 365"
 * @param cusum at least one case
 */
public record CusumChart(ChartHead head, String failure, OutcomeCusum cusum) {
    private static final int MOST_ROWS = 12;

    public CusumChart {
        if (cusum.points().isEmpty()) {
            throw new IllegalArgumentException("cusum must hold at least one case");
        }
    }

    /** The words and the table: the cases in blocks of equal size. */
    public ChartWords words() {
        List<CusumPoint> points = cusum.points();
        int block = (points.size() + MOST_ROWS - 1) / MOST_ROWS;
        List<List<String>> rows = new ArrayList<>();
        for (int from = 0; from < points.size(); from += block) {
            rows.add(row(points.subList(from, Math.min(from + block, points.size()))));
        }
        return new ChartWords(
                head.title(),
                head.subtitle(),
                "Failure: " + failure
                        + ". Worse and better: how much evidence has piled up, after the last case of the row.",
                List.of("cases", "failed", "predicted", "worse", "better", "signal"),
                rows,
                head.notesAfter(findings()));
    }

    private static List<String> row(List<CusumPoint> block) {
        CusumPoint last = block.get(block.size() - 1);
        String signals = block.stream()
                .flatMap(point -> point.signals().stream())
                .map(signal -> word(signal) + " at " + signal.caseNumber())
                .collect(Collectors.joining(", "));
        return List.of(
                (block.size() == 1 ? "" : block.get(0).caseNumber() + " to ") + last.caseNumber(),
                String.valueOf(failures(block)),
                Figures.tenths(predicted(block)),
                Figures.number(last.worse()),
                Figures.number(last.better()),
                signals.isEmpty() ? "-" : signals);
    }

    private List<String> findings() {
        List<String> findings = new ArrayList<>();
        cusum.signals().forEach(signal -> findings.add(finding(signal)));
        if (findings.isEmpty()) {
            findings.add("No signal.");
        }
        List<CusumPoint> points = cusum.points();
        findings.add("In all " + failures(points) + " failures in " + points.size() + " cases, "
                + Figures.tenths(predicted(points)) + " predicted.");
        CusumDesign design = cusum.design();
        findings.add("The chart signals worse results at " + Figures.number(design.worseLimit())
                + ", watching for odds of failure times " + Figures.number(design.worseOddsRatio())
                + ", and better ones at -" + Figures.number(design.betterLimit()) + ", watching for times "
                + Figures.number(design.betterOddsRatio())
                + "; it then starts again from 0. A signal asks for a look at the cases and at the prediction; it proves"
                + " nothing and blames nobody.");
        return findings;
    }

    private String finding(CusumSignal signal) {
        List<CusumPoint> run = cusum.points().subList(signal.sinceCaseNumber() - 1, signal.caseNumber());
        return "Case " + signal.caseNumber() + ": " + word(signal).toUpperCase(Locale.ROOT)
                + " than predicted, most likely since about case " + signal.sinceCaseNumber() + " (" + failures(run)
                + " failures in " + run.size() + " cases, " + Figures.tenths(predicted(run)) + " predicted).";
    }

    private static String word(CusumSignal signal) {
        return switch (signal.side()) {
            case WORSE -> "worse";
            case BETTER -> "better";
        };
    }

    private static long failures(List<CusumPoint> points) {
        return points.stream().filter(point -> point.outcome().failed()).count();
    }

    private static double predicted(List<CusumPoint> points) {
        return points.stream()
                .mapToDouble(point -> point.outcome().failureProbability())
                .sum();
    }
}
