package org.tunica.cli;

import java.util.List;
import org.tunica.picture.ChartWords;

/** A chart as plain text: what it is, a drawing in letters where there is one, its key, the table, the notes. */
final class ChartText {
    private final ChartWords words;
    private final int width;

    ChartText(ChartWords words, int width) {
        this.words = words;
        this.width = width;
    }

    /** @param drawing lines no wider than the text; may be none */
    String text(List<String> drawing, String key) {
        StringBuilder out = new StringBuilder();
        out.append(Wrap.paragraph(width, 0, words.title()));
        out.append("=".repeat(Math.min(width, words.title().length()))).append('\n');
        out.append(Wrap.paragraph(width, 0, words.subtitle())).append('\n');
        if (!drawing.isEmpty()) {
            drawing.forEach(line -> out.append(line).append('\n'));
            out.append('\n').append(Wrap.paragraph(width, 0, key)).append('\n');
        }
        out.append(Wrap.paragraph(width, 0, words.caption())).append('\n');
        TextTable.lines(words.header(), words.rows(), width)
                .forEach(line -> out.append(line).append('\n'));
        words.notes().forEach(note -> out.append('\n').append(Wrap.paragraph(width, 0, note)));
        return out.toString();
    }
}
