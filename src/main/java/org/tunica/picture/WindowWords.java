package org.tunica.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tunica.casefile.Segment;
import org.tunica.physics.SegmentWindow;
import org.tunica.plan.Advice;

/**
 * What stands beside a heat window, the same in a picture and in a text.
 *
 * @param title segment and technique
 * @param subtitle what the window is computed for
 * @param caption what the table tells, to stand above it
 * @param header head of the table, one cell a column
 * @param rows rows of the table
 * @param notes sentences beneath, the most important first, the caution last
 */
public record WindowWords(
        String title,
        String subtitle,
        String caption,
        List<String> header,
        List<List<String>> rows,
        List<String> notes) {

    /** Words for a window under a release of rules and knowledge. */
    public static WindowWords of(SegmentWindow window, Advice.Release release) {
        WindowTable table = new WindowTable(window);
        WindowNotes written = new WindowNotes(window);
        List<String> notes = new ArrayList<>(written.all());
        notes.add(release.state().word().toUpperCase(Locale.ROOT) + " knowledge " + release.version() + ". "
                + Advice.CAUTION);
        return new WindowWords(
                title(window), subtitle(window), written.caption(), table.header(), table.rows(), List.copyOf(notes));
    }

    private static String title(SegmentWindow window) {
        Segment segment = window.segment();
        return "Segment " + segment.ref() + ", " + segment.vein().word().replace('-', ' ') + ", "
                + segment.level().word().replace('-', ' ') + ": "
                + window.technique().says();
    }

    private static String subtitle(SegmentWindow window) {
        Segment segment = window.segment();
        return "Wall " + Figures.mm(segment.wallThicknessMm().orElseThrow()) + " at a lumen of "
                + Figures.mm(segment.lumenDiameterMm().orElseThrow()) + ", which is "
                + Figures.mm(window.slice().wallMm()) + " wrapped on the device. Tumescence "
                + Figures.mm(window.slice().tumescentMm()) + " at "
                + Figures.number(window.slice().tumescentC()) + " C; "
                + (window.slice().bloodFraction().isPresent() ? "BLOOD LEFT IN THE VEIN." : "vein emptied of blood.");
    }
}
