package org.tunica.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.tunica.picture.SurvivalChart;
import org.tunica.statistics.KaplanMeier;
import org.tunica.statistics.SurvivalAt;
import org.tunica.wording.SettingWords;

/** Curves over time as plain text: each group its letter, numbers at risk beneath, the table, the notes. */
final class SurvivalText {
    private static final String KEY =
            "Up: share in %. Across: days after treatment. Each group is drawn with its letter; *"
                    + " stands where several lie together. A curve ends with the last look at its group.";

    private static final int FEW_ROWS = 10;
    private static final int MANY_ROWS = 20;
    private static final double PERCENT = 100;
    /** Room for "100 |". */
    private static final int MARGIN = 5;

    private final SurvivalChart chart;
    private final int width;
    private final int columns;
    private final int rows;

    SurvivalText(SurvivalChart chart, int width) {
        this.chart = chart;
        this.width = width;
        // the last day and its number at risk may need a few letters more than the curve
        this.columns = width - MARGIN - MARGIN;
        this.rows = chart.axisFromPercent() > 0 ? FEW_ROWS : MANY_ROWS;
    }

    String text() {
        return new ChartText(chart.words(), width).text(drawing(), key());
    }

    private String key() {
        return chart.axisFromPercent() > 0
                ? KEY + " The axis starts at " + SettingWords.plain(chart.axisFromPercent()) + " %."
                : KEY;
    }

    private List<String> drawing() {
        LetterGrid grid = new LetterGrid(rows + 1, columns);
        for (int i = 0; i < chart.groups().size(); i++) {
            curve(grid, chart.groups().get(i).curve(), chart.letter(i).charAt(0));
        }
        List<String> labels = IntStream.rangeClosed(0, rows)
                .mapToObj(row -> SettingWords.plain(PERCENT - row * step()))
                .map(label -> " ".repeat(MARGIN - 2 - label.length()) + label)
                .toList();
        List<String> lines = new ArrayList<>(grid.lines(labels));
        TreeMap<Integer, String> days = new TreeMap<>();
        chart.axisDays().forEach(day -> days.put(column(day), String.valueOf(day)));
        lines.add(" ".repeat(MARGIN - 1) + "+" + "-".repeat(columns));
        lines.add(LetterGrid.under(MARGIN, "day  ", days));
        lines.add("at risk");
        for (int i = 0; i < chart.groups().size(); i++) {
            int group = i;
            TreeMap<Integer, String> atRisk = new TreeMap<>();
            chart.axisDays().forEach(day -> atRisk.put(column(day), chart.atRisk(group, day)));
            lines.add(LetterGrid.under(MARGIN, "   " + chart.letter(i) + " ", atRisk));
        }
        return lines;
    }

    private void curve(LetterGrid grid, KaplanMeier curve, char letter) {
        for (int column = 0; column <= column(curve.lastDaysAfter()); column++) {
            Optional<SurvivalAt> read = curve.at(Math.min(day(column), curve.lastDaysAfter()));
            double percent = PERCENT * read.orElseThrow().free().freeShare();
            int row = Math.min(rows, (int) Math.round((PERCENT - percent) / step()));
            grid.put(row, column, grid.at(row, column) == ' ' ? letter : '*');
        }
    }

    private double step() {
        return (PERCENT - chart.axisFromPercent()) / rows;
    }

    private int day(int column) {
        return (int) Math.round((double) column * chart.lastDay() / (columns - 1));
    }

    private int column(int day) {
        return (int) Math.round((double) day * (columns - 1) / Math.max(1, chart.lastDay()));
    }
}
