package org.tunica.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tunica.heat.HeatWindow;
import org.tunica.physics.SegmentWindow;
import org.tunica.picture.ChartWords;

/** A heat window as plain text: a map in letters where there is one, the table, the notes. */
final class WindowText {
    private static final int ROOMY = 75;

    private final SegmentWindow window;
    private final ChartWords words;
    private final int width;

    WindowText(SegmentWindow window, ChartWords words, int width) {
        this.window = window;
        this.words = words;
        this.width = width;
    }

    String text() {
        StringBuilder out = new StringBuilder();
        out.append(Wrap.paragraph(width, 0, words.title()));
        out.append("=".repeat(Math.min(width, words.title().length()))).append('\n');
        out.append(Wrap.paragraph(width, 0, words.subtitle())).append('\n');
        window.map().ifPresent(map -> out.append(map(map)).append('\n'));
        out.append(Wrap.paragraph(width, 0, words.caption())).append('\n');
        table().forEach(line -> out.append(line).append('\n'));
        words.notes().forEach(note -> out.append('\n').append(Wrap.paragraph(width, 0, note)));
        return out.toString();
    }

    private String map(HeatWindow map) {
        LetterMap letters = new LetterMap(window, map, width);
        return String.join("\n", letters.lines()) + "\n\n" + Wrap.paragraph(width, 0, LetterMap.KEY);
    }

    /** Cells under heads that are broken at their blanks; every column as wide as its widest word or cell. */
    private List<String> table() {
        List<String[]> heads = words.header().stream()
                .map(head -> head.split(" (?!once|later)"))
                .toList();
        int deep = heads.stream().mapToInt(head -> head.length).max().orElse(1);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < deep; i++) {
            int line = i;
            rows.add(heads.stream()
                    .map(head -> line < head.length ? head[line] : "")
                    .toList());
        }
        rows.addAll(words.rows());
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
