package org.tunica.cli;

import java.util.List;
import org.tunica.physics.SegmentWindow;
import org.tunica.picture.ChartWords;

/** A heat window as plain text: a map in letters where there is one, the table, the notes. */
final class WindowText {
    private final SegmentWindow window;
    private final ChartWords words;
    private final int width;

    WindowText(SegmentWindow window, ChartWords words, int width) {
        this.window = window;
        this.words = words;
        this.width = width;
    }

    String text() {
        List<String> map = window.map()
                .map(found -> new LetterMap(window, found, width).lines())
                .orElse(List.of());
        return new ChartText(words, width).text(map, LetterMap.KEY);
    }
}
