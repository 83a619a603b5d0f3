package org.tunica.cli;

import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Help;

/** Lays texts out in columns and wraps them at blanks. */
final class Wrap {
    private static final Help.ColorScheme PLAIN = Help.defaultColorScheme(Help.Ansi.OFF);

    /** Keeps an id such as heat.skin-gap.min from being broken at its dots; taken out again after wrapping. */
    private static final String JOINER = "\u2060";

    private static final Pattern DOT_IN_AN_ID = Pattern.compile("(?<=\\w)\\.(?=[A-Za-z])");

    /** The least width left for the last column. */
    static final int NARROWEST = 20;

    private Wrap() {}

    /** A table; the last column takes what is left of the width and each cell wraps in its own column. */
    static String table(int width, List<Integer> columns, List<List<String>> rows) {
        int used = columns.stream().mapToInt(Integer::intValue).sum();
        Help.Column[] all = new Help.Column[columns.size() + 1];
        for (int i = 0; i < columns.size(); i++) {
            all[i] = new Help.Column(columns.get(i), 0, Help.Column.Overflow.WRAP);
        }
        all[columns.size()] = new Help.Column(Math.max(NARROWEST, width - used), 0, Help.Column.Overflow.WRAP);
        return rows.stream().map(row -> row(all, row)).collect(Collectors.joining());
    }

    /** Every cell starts in the first line; the lines that picocli leaves empty at the end are cut off. */
    private static String row(Help.Column[] columns, List<String> cells) {
        Help.TextTable table = Help.TextTable.forColumns(PLAIN, columns);
        table.addEmptyRow();
        for (int i = 0; i < cells.size(); i++) {
            String cell = DOT_IN_AN_ID.matcher(cells.get(i)).replaceAll("." + JOINER);
            table.putValue(0, i, PLAIN.ansi().new Text(cell, PLAIN));
        }
        return table.toString().replace(JOINER, "").stripTrailing().replaceAll("[ ]+\n", "\n") + "\n";
    }

    /** A paragraph indented by some blanks. */
    static String paragraph(int width, int indent, String text) {
        return table(width, indent == 0 ? List.of() : List.of(indent), indented(indent, text));
    }

    private static List<List<String>> indented(int indent, String text) {
        return Collections.singletonList(indent == 0 ? List.of(text) : List.of("", text));
    }
}
