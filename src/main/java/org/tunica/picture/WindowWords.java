package org.tunica.picture;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.Segment;
import org.tunica.physics.SegmentWindow;
import org.tunica.plan.Advice;

/** The words and the table of a heat window. */
public final class WindowWords {
    private WindowWords() {}

    /** Words for a window under a release of rules and knowledge. */
    public static ChartWords of(SegmentWindow window, Advice.Release release) {
        WindowTable table = new WindowTable(window);
        WindowNotes written = new WindowNotes(window);
        List<String> notes = new ArrayList<>(written.all());
        notes.add(ChartHead.caution(release));
        return new ChartWords(title(window), subtitle(window), written.caption(), table.header(), table.rows(), notes);
    }

    private static String title(SegmentWindow window) {
        Segment segment = window.segment();
        return "Segment " + segment.ref() + ", " + segment.vein().word().replace('-', ' ') + ", "
                + segment.level().word().replace('-', ' ') + ": "
                + window.technique().says();
    }

    /** The wall a window holds for. */
    public static String subtitle(SegmentWindow window) {
        Segment segment = window.segment();
        return "Wall " + Figures.mm(segment.wallThicknessMm().orElseThrow()) + " at a lumen of "
                + Figures.mm(segment.lumenDiameterMm().orElseThrow()) + ", which is "
                + Figures.mm(window.slice().wallMm()) + " wrapped on the device. Tumescence "
                + Figures.mm(window.slice().tumescentMm()) + " at "
                + Figures.number(window.slice().tumescentC()) + " C; "
                + (window.slice().bloodFraction().isPresent() ? "BLOOD LEFT IN THE VEIN." : "vein emptied of blood.");
    }
}
