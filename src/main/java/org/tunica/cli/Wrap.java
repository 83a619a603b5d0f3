package org.tunica.cli;

import java.util.Collections;
import java.util.List;
import picocli.CommandLine.Help;

/** Lays texts out in columns and wraps them at blanks. */
final class Wrap {
    private static final Help.ColorScheme PLAIN = Help.defaultColorScheme(Help.Ansi.OFF);

    private Wrap() {}

    /** A table; the last column takes what is left of the width and wraps. */
    static String table(int width, List<Integer> columns, List<List<String>> rows) {
        int used = columns.stream().mapToInt(Integer::intValue).sum();
        Help.Column[] all = new Help.Column[columns.size() + 1];
        for (int i = 0; i < columns.size(); i++) {
            all[i] = new Help.Column(columns.get(i), 0, Help.Column.Overflow.WRAP);
        }
        all[columns.size()] = new Help.Column(Math.max(20, width - used), 0, Help.Column.Overflow.WRAP);
        Help.TextTable table = Help.TextTable.forColumns(PLAIN, all);
        rows.forEach(row -> table.addRowValues(row.toArray(String[]::new)));
        return table.toString().replaceAll("[ ]+\n", "\n");
    }

    /** A paragraph indented by some blanks. */
    static String paragraph(int width, int indent, String text) {
        return table(width, indent == 0 ? List.of() : List.of(indent), indented(indent, text));
    }

    private static List<List<String>> indented(int indent, String text) {
        return Collections.singletonList(indent == 0 ? List.of(text) : List.of("", text));
    }
}
