package org.tunica.cli;

import java.util.ArrayList;
import java.util.List;
import org.tunica.picture.FunnelChart;
import org.tunica.statistics.FunnelPlace;
import org.tunica.statistics.FunnelPoint;
import org.tunica.wording.SettingWords;

/** Groups or periods against a target as plain text: one line each with its limits, the table, the notes. */
final class FunnelText {
    private static final String KEY =
            "[ ] the 99.8 % limits, ( ) the 95 % limits, : the target; o within, x outside the 95 %"
                    + " limits, X outside the 99.8 % limits.";

    private static final double PERCENT = 100;
    private static final int WIDEST_NAME = 18;

    private final FunnelChart chart;
    private final int width;
    private final int columns;
    private final List<String> names;

    FunnelText(FunnelChart chart, int width) {
        this.chart = chart;
        this.width = width;
        this.names = chart.funnel().points().stream()
                .map(point -> point.group().name())
                .map(name -> name.substring(0, Math.min(name.length(), WIDEST_NAME)))
                .toList();
        this.columns = width - 2 - widest();
    }

    private int widest() {
        return names.stream().mapToInt(String::length).max().orElse(0);
    }

    String text() {
        return new ChartText(chart.words(), width).text(drawing(), KEY);
    }

    private List<String> drawing() {
        List<FunnelPoint> points = chart.funnel().points();
        LetterGrid grid = new LetterGrid(points.size(), columns);
        for (int row = 0; row < points.size(); row++) {
            FunnelPoint point = points.get(row);
            grid.put(row, column(chart.funnel().targetShare()), ':');
            grid.put(row, column(point.inner().lowShare()), '(');
            grid.put(row, column(point.inner().highShare()), ')');
            grid.put(row, column(point.outer().lowShare()), '[');
            grid.put(row, column(point.outer().highShare()), ']');
            grid.put(row, column(point.group().share()), mark(point.place()));
        }
        List<String> lines = new ArrayList<>(grid.lines(names));
        String from = SettingWords.plain(chart.axisFromPercent()) + " %";
        String to = SettingWords.plain(chart.axisToPercent()) + " %";
        lines.add(" ".repeat(widest() + 2) + from + " ".repeat(columns - from.length() - to.length()) + to);
        return lines;
    }

    private int column(double share) {
        double of = (PERCENT * share - chart.axisFromPercent()) / (chart.axisToPercent() - chart.axisFromPercent());
        return (int) Math.round(of * (columns - 1));
    }

    private static char mark(FunnelPlace place) {
        return switch (place) {
            case WITHIN -> 'o';
            case ABOVE_INNER, BELOW_INNER -> 'x';
            case ABOVE_OUTER, BELOW_OUTER -> 'X';
        };
    }
}
