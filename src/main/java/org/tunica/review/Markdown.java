package org.tunica.review;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Writes a page as Markdown with tables. */
final class Markdown {
    private static final int FENCE = 3;

    private final StringBuilder out = new StringBuilder();

    Markdown heading(int level, String text) {
        return block("#".repeat(level) + " " + Ink.text(text).line());
    }

    Markdown paragraph(String text) {
        return paragraph(Ink.text(text));
    }

    Markdown paragraph(Ink... parts) {
        return block(Ink.of(parts).line().strip());
    }

    Markdown bullets(List<Ink> items) {
        return items.isEmpty()
                ? this
                : block(items.stream().map(item -> "- " + item.line().strip()).collect(Collectors.joining("\n")));
    }

    /** A table; each row has as many cells as the head. */
    Markdown table(List<String> head, List<List<Ink>> rows) {
        StringBuilder table = new StringBuilder(row(head.stream().map(Ink::text).toList()));
        table.append('\n').append("|").append(" --- |".repeat(head.size()));
        for (List<Ink> row : rows) {
            if (row.size() != head.size()) {
                throw new IllegalArgumentException("a row has " + row.size() + " cells, the head " + head.size());
            }
            table.append('\n').append(row(row));
        }
        return block(table.toString());
    }

    /** Lines exactly as a file holds them. */
    Markdown lines(String text) {
        String fence = "`".repeat(FENCE);
        while (text.contains(fence)) {
            fence += "`";
        }
        return block(fence + "\n" + text.stripTrailing() + "\n" + fence);
    }

    private static String row(List<Ink> cells) {
        return cells.stream().map(Ink::cell).collect(Collectors.joining(" | ", "| ", " |"));
    }

    private Markdown block(String text) {
        out.append(text).append("\n\n");
        return this;
    }

    static List<Ink> cells(String... texts) {
        return Arrays.stream(texts).map(Ink::text).toList();
    }

    /** The page, ending with one line end. */
    String text() {
        return out.toString().stripTrailing() + "\n";
    }
}
