package org.tunica.cli;

import java.util.ArrayList;
import java.util.List;
import org.tunica.paper.Block;
import org.tunica.paper.Document;
import org.tunica.paper.Printable;

/** A document as plain text: the same words as on paper. */
final class PaperText {
    private static final int MARGIN = 2;
    private static final int INDENT = 4;
    private static final int LABEL = 34;
    private static final int GAP = 2;

    private final int width;
    private final StringBuilder out = new StringBuilder();

    PaperText(int width) {
        this.width = width;
    }

    String of(Document document) {
        String mark = document.mark().isEmpty() ? "" : document.mark() + ". ";
        String title = document.title() + ", " + document.reference();
        line(0, mark + title);
        document.cautions().forEach(caution -> line(0, caution));
        document.sections().forEach(this::section);
        return out.toString();
    }

    /** Sections alone, for a text that has its own beginning. */
    String of(List<Document.Section> sections) {
        sections.forEach(this::section);
        return out.toString();
    }

    private void section(Document.Section section) {
        out.append('\n');
        line(0, section.heading());
        out.append("=".repeat(Math.min(section.heading().length(), width))).append('\n');
        section.blocks().forEach(this::block);
    }

    private void block(Block block) {
        if (block instanceof Block.Heading heading) {
            line(MARGIN, heading.text() + ":");
        } else if (block instanceof Block.Paragraph paragraph) {
            line(MARGIN, paragraph.text());
        } else if (block instanceof Block.Warning warning) {
            line(MARGIN, "! " + warning.text());
        } else if (block instanceof Block.Points points) {
            points.items().forEach(item -> line(INDENT, "- " + item));
        } else if (block instanceof Block.Lines lines) {
            lines.lines().forEach(line -> labelled(line.label(), line.text()));
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Drawing drawing) {
            line(MARGIN, "[" + drawing.says() + "]");
        }
    }

    private void labelled(String label, String text) {
        out.append(Wrap.table(width, List.of(MARGIN, LABEL), List.of(List.of("", label, Printable.of(text)))));
    }

    /** Columns as wide as their widest cell; a table too wide for the page becomes labelled lines. */
    private void table(Block.Table table) {
        List<Integer> columns = new ArrayList<>(List.of(MARGIN));
        for (int i = 0; i < table.head().size() - 1; i++) {
            columns.add(widest(table, i) + GAP);
        }
        int used = columns.stream().mapToInt(Integer::intValue).sum();
        if (used + Wrap.NARROWEST > width) {
            table.rows().forEach(row -> inLines(table.head(), row));
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        rows.add(indented(table.head()));
        table.rows().forEach(row -> rows.add(indented(row)));
        out.append(Wrap.table(width, columns, rows));
    }

    private void inLines(List<String> head, List<String> row) {
        for (int i = 0; i < row.size(); i++) {
            if (!row.get(i).isEmpty()) {
                labelled(head.get(i), row.get(i));
            }
        }
    }

    private static List<String> indented(List<String> row) {
        List<String> all = new ArrayList<>(List.of(""));
        row.forEach(cell -> all.add(Printable.of(cell)));
        return all;
    }

    private static int widest(Block.Table table, int column) {
        int widest = table.head().get(column).length();
        for (List<String> row : table.rows()) {
            widest = Math.max(widest, row.get(column).length());
        }
        return widest;
    }

    private void line(int indent, String text) {
        out.append(Wrap.paragraph(width, indent, Printable.of(text)));
    }
}
