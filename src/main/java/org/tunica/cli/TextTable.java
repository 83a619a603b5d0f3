package org.tunica.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The table of a chart as lines of text. */
final class TextTable {
    private static final int ROOMY = 75;

    private TextTable() {}

    /** Cells under heads that are broken at their blanks; every column as wide as its widest word or cell. */
    static List<String> lines(List<String> header, List<List<String>> cells, int width) {
        List<String[]> heads =
                header.stream().map(head -> head.split(" (?!once|later|%)")).toList();
        int deep = heads.stream().mapToInt(head -> head.length).max().orElse(1);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < deep; i++) {
            int line = i;
            rows.add(heads.stream()
                    .map(head -> line < head.length ? head[line] : "")
                    .toList());
        }
        rows.addAll(cells);
        int[] widths = IntStream.range(0, heads.size())
                .map(column -> rows.stream()
                        .mapToInt(row -> row.get(column).length())
                        .max()
                        .orElse(0))
                .toArray();
        String gap = width < ROOMY ? " " : "   ";
        return rows.stream().map(row -> line(row, widths, gap)).toList();
    }

    private static String line(List<String> row, int[] widths, String gap) {
        Stream<String> cells = IntStream.range(0, row.size())
                .mapToObj(i -> row.get(i) + " ".repeat(widths[i] - row.get(i).length()));
        return cells.collect(Collectors.joining(gap)).stripTrailing();
    }
}
