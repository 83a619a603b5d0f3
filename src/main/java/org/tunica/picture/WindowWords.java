package org.tunica.picture;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.Segment;
import org.tunica.physics.SegmentWindow;
import org.tunica.plan.Advice;

/**
 * What stands beside a heat window, the same in a picture and in a text.
 *
 * @param title segment and technique
 * @param subtitle what the window is computed for
 * @param header head of the table, one cell a column
 * @param rows rows of the table
 * @param notes sentences beneath, the most important first, the caution last
 */
public record WindowWords(
        String title, String subtitle, List<String> header, List<List<String>> rows, List<String> notes) {

    /** Words for a window under a release of rules and knowledge. */
    public static WindowWords of(SegmentWindow window, Advice.Release release) {
        WindowTable table = new WindowTable(window);
        List<String> notes = new ArrayList<>(new WindowNotes(window).all());
        notes.add(release.state().word().toUpperCase(java.util.Locale.ROOT) + " knowledge " + release.version() + ". "
                + Advice.CAUTION);
        return new WindowWords(title(window), subtitle(window), table.header(), table.rows(), List.copyOf(notes));
    }

    private static String title(SegmentWindow window) {
        Segment segment = window.segment();
        return "Segment " + segment.ref() + ", " + segment.vein().word().replace('-', ' ') + ", "
                + segment.level().word().replace('-', ' ') + ": "
                + window.technique().says();
    }

    private static String subtitle(SegmentWindow window) {
        return "Wall " + Figures.mm(window.slice().wallMm()) + " on the device; tumescence "
                + Figures.mm(window.slice().tumescentMm()) + " at "
                + Figures.number(window.slice().tumescentC()) + " C; vein emptied of blood";
    }
}
