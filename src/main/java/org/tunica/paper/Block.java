package org.tunica.paper;

import java.util.List;

/** A part of a section. Texts are plain text; whatever they hold is printed as it stands. */
public sealed interface Block {
    /** A smaller heading inside a section. */
    record Heading(String text) implements Block {}

    /** A paragraph. */
    record Paragraph(String text) implements Block {}

    /** A paragraph nobody may overlook. */
    record Warning(String text) implements Block {}

    /** A list with a dot before each item. */
    record Points(List<String> items) implements Block {
        public Points {
            items = List.copyOf(items);
        }
    }

    /** Labels on the left, what they stand for on the right. */
    record Lines(List<Line> lines) implements Block {
        public Lines {
            lines = List.copyOf(lines);
        }
    }

    /** One label and its text. */
    record Line(String label, String text) {}

    /**
     * A table with a head that is repeated on every page.
     *
     * @param rows each as long as the head
     */
    record Table(List<String> head, List<List<String>> rows) implements Block {
        public Table {
            head = List.copyOf(head);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<String> row : rows) {
                if (row.size() != head.size()) {
                    throw new IllegalArgumentException("rows must have " + head.size() + " cells, got " + row);
                }
            }
        }
    }

    /**
     * A small drawing.
     *
     * @param svg an SVG with width and height; only shapes and text, see {@link Drawings}
     * @param says what it shows, for those who do not see it
     */
    record Drawing(String svg, String says) implements Block {}
}
