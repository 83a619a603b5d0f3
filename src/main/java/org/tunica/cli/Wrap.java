package org.tunica.cli;

import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Help;

/** Lays texts out in columns and wraps them at blanks. */
final class Wrap {
    private static final Help.ColorScheme PLAIN = Help.defaultColorScheme(Help.Ansi.OFF);

    /**
     * Stands for the dots of an id such as heat.skin-gap.min while lines are broken: a letter, for a line is broken
     * behind a dot even where a joiner follows it.
     */
    private static final String DOT_OF_AN_ID = "\uA78F";

    private static final Pattern DOT_IN_AN_ID = Pattern.compile("(?<=\\w)\\.(?=[A-Za-z])");

    /** The least width left for the last column. */
    static final int NARROWEST = 20;

    private static final int BLANK = 1;

    private Wrap() {}

    /** A table; the last column takes what is left of the width, each cell wraps in its own and a blank parts them. */
    static String table(int width, List<Integer> columns, List<List<String>> rows) {
        int used = columns.stream().mapToInt(Integer::intValue).sum();
        Help.Column[] all = new Help.Column[2 * columns.size() + 1];
        for (int i = 0; i < columns.size(); i++) {
            all[2 * i] = column(columns.get(i) - BLANK);
            all[2 * i + 1] = column(BLANK);
        }
        all[2 * columns.size()] = column(Math.max(NARROWEST, width - used));
        return rows.stream().map(row -> row(all, row)).collect(Collectors.joining());
    }

    private static Help.Column column(int width) {
        return new Help.Column(width, 0, Help.Column.Overflow.WRAP);
    }

    /** Every cell starts in the first line; the lines that picocli leaves empty at the end are cut off. */
    private static String row(Help.Column[] columns, List<String> cells) {
        Help.TextTable table = Help.TextTable.forColumns(PLAIN, columns);
        table.addEmptyRow();
        for (int i = 0; i < cells.size(); i++) {
            String cell = DOT_IN_AN_ID.matcher(cells.get(i)).replaceAll(DOT_OF_AN_ID);
            table.putValue(0, 2 * i, PLAIN.ansi().new Text(cell, PLAIN));
        }
        return table.toString().replace(DOT_OF_AN_ID, ".").stripTrailing().replaceAll("[ ]+\n", "\n") + "\n";
    }

    /** A paragraph indented by some blanks. */
    static String paragraph(int width, int indent, String text) {
        return table(width, indent == 0 ? List.of() : List.of(indent), indented(indent, text));
    }

    private static List<List<String>> indented(int indent, String text) {
        return Collections.singletonList(indent == 0 ? List.of(text) : List.of("", text));
    }
}
