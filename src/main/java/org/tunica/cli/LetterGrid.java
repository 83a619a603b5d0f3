package org.tunica.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/** Columns and rows of single letters, the first row at the top. */
final class LetterGrid {
    private final char[][] cells;

    LetterGrid(int rows, int columns) {
        cells = new char[rows][columns];
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
    }

    void put(int row, int column, char letter) {
        cells[row][column] = letter;
    }

    char at(int row, int column) {
        return cells[row][column];
    }

    /** A letter in every cell of a row that is still empty. */
    void fill(int row, char letter) {
        for (int column = 0; column < cells[row].length; column++) {
            if (cells[row][column] == ' ') {
                cells[row][column] = letter;
            }
        }
    }

    /** Rows behind labels that end in the same column. */
    List<String> lines(List<String> labels) {
        int widest = labels.stream().mapToInt(String::length).max().orElse(0);
        List<String> lines = new ArrayList<>();
        for (int row = 0; row < cells.length; row++) {
            String label = labels.get(row);
            lines.add((" ".repeat(widest - label.length()) + label + " |" + new String(cells[row])).stripTrailing());
        }
        return lines;
    }

    /** Texts that start at their columns, those left out that would touch the one before. */
    static String under(int margin, String label, SortedMap<Integer, String> texts) {
        StringBuilder line = new StringBuilder(label);
        for (Map.Entry<Integer, String> text : texts.entrySet()) {
            int column = margin + text.getKey();
            if (line.length() < column || line.length() == margin && text.getKey() == 0) {
                line.append(" ".repeat(column - line.length())).append(text.getValue());
            }
        }
        return line.toString();
    }
}
