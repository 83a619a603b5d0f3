package org.tunica.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.tunica.picture.CusumChart;
import org.tunica.statistics.CusumPoint;
import org.tunica.statistics.CusumSide;

/** Results against predictions as plain text: bars upwards for worse, downwards for better, the table, the notes. */
final class CusumText {
    private static final int ROWS_A_SIDE = 7;
    /** Room for "-10.5 |". */
    private static final int MARGIN = 7;

    private final CusumChart chart;
    private final int width;
    private final int casesAColumn;
    private final List<List<CusumPoint>> columns = new ArrayList<>();

    CusumText(CusumChart chart, int width) {
        this.chart = chart;
        this.width = width;
        List<CusumPoint> points = chart.cusum().points();
        this.casesAColumn = (points.size() + width - MARGIN - 1) / (width - MARGIN);
        for (int from = 0; from < points.size(); from += casesAColumn) {
            columns.add(points.subList(from, Math.min(from + casesAColumn, points.size())));
        }
    }

    String text() {
        return new ChartText(chart.words(), width).text(drawing(), key());
    }

    private String key() {
        return "Across: cases in order, " + casesAColumn
                + " a column. w upwards: evidence of worse results; b downwards:"
                + " of better ones; W or B: a signal, after which the chart starts again. - limits. Middle line: f a failure, ."
                + " none.";
    }

    private List<String> drawing() {
        double worseLimit = chart.cusum().design().worseLimit();
        double betterLimit = chart.cusum().design().betterLimit();
        double worseStep = step(worseLimit, CusumPoint::worse);
        double betterStep = step(betterLimit, point -> -point.better());
        LetterGrid grid = new LetterGrid(2 * ROWS_A_SIDE + 1, columns.size());
        for (int i = 0; i < columns.size(); i++) {
            List<CusumPoint> cases = columns.get(i);
            bar(
                    grid,
                    i,
                    -1,
                    height(cases, CusumPoint::worse, worseStep),
                    signalled(cases, CusumSide.WORSE) ? "wW" : "ww");
            bar(
                    grid,
                    i,
                    1,
                    height(cases, point -> -point.better(), betterStep),
                    signalled(cases, CusumSide.BETTER) ? "bB" : "bb");
            boolean failed = cases.stream().anyMatch(point -> point.outcome().failed());
            grid.put(ROWS_A_SIDE, i, failed ? 'f' : '.');
        }
        grid.fill(ROWS_A_SIDE - rows(worseLimit, worseStep), '-');
        grid.fill(ROWS_A_SIDE + rows(betterLimit, betterStep), '-');
        return grid.lines(IntStream.rangeClosed(-ROWS_A_SIDE, ROWS_A_SIDE)
                .mapToObj(row -> label(row, row < 0 ? worseStep : betterStep))
                .toList());
    }

    /** What a row stands for; the highest value or the limit fills all of them. */
    private double step(double limit, ToDoubleFunction<CusumPoint> value) {
        double highest =
                chart.cusum().points().stream().mapToDouble(value).max().orElseThrow();
        return Math.max(limit, highest) / ROWS_A_SIDE;
    }

    private static int rows(double value, double step) {
        return (int) Math.round(value / step);
    }

    private static int height(List<CusumPoint> cases, ToDoubleFunction<CusumPoint> value, double step) {
        return rows(
                cases.stream()
                        .map(value::applyAsDouble)
                        .max(Comparator.naturalOrder())
                        .orElseThrow(),
                step);
    }

    private static boolean signalled(List<CusumPoint> cases, CusumSide side) {
        return cases.stream().flatMap(point -> point.signals().stream()).anyMatch(signal -> signal.side() == side);
    }

    /** @param letters the letter of the bar and that of its end */
    private static void bar(LetterGrid grid, int column, int way, int height, String letters) {
        for (int i = 1; i <= height; i++) {
            grid.put(ROWS_A_SIDE + way * i, column, letters.charAt(i == height ? 1 : 0));
        }
    }

    private static String label(int row, double step) {
        return row == 0 ? "0" : String.format(Locale.ROOT, "%.1f", -row * step);
    }
}
