package org.tunica.picture;

import java.util.List;

/**
 * What stands beside a chart, the same in a picture and in a text: nothing a chart shows is missing here.
 *
 * @param title what it is about
 * @param subtitle what it holds for
 * @param caption what the table tells, to stand above it
 * @param header head of the table, one cell a column
 * @param rows rows of the table
 * @param notes sentences beneath, the most important first, the caution last
 */
public record ChartWords(
        String title,
        String subtitle,
        String caption,
        List<String> header,
        List<List<String>> rows,
        List<String> notes) {
    public ChartWords {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }
}
