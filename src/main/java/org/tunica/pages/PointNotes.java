package org.tunica.pages;

import java.util.ArrayList;
import java.util.List;
import org.tunica.knowledge.Knowledge;

/** The help to what one setting does to one wall: what each number is, and the limits it is held against. */
final class PointNotes {
    private static final String MODEL = "one run of the heat model with its constants as they stand, for this wall";

    private final Knowledge knowledge;

    PointNotes(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    List<NumberNote> coat(String name) {
        return with(
                name + " dead",
                "share of the " + name
                        + " that lies within the depth of death; at once by heat, later by what heat started",
                "wall.drawn.intima-share",
                "wall.drawn.media-share");
    }

    List<NumberNote> depth() {
        return with(
                "depth dead",
                "how deep from the inner face all tissue dies, against the wall as it lies on the device");
    }

    List<NumberNote> charring() {
        return with(
                "char index",
                "how near the inner face comes to charring; 1 is where it starts. Carbon spreads less heat and bursts walls",
                "heat.setting.char-probability");
    }

    List<NumberNote> perforation() {
        return with(
                "perforation index",
                "how near the wall comes to being burnt through, against the index below",
                "heat.setting.perforation-index");
    }

    /** @param what nerve or skin */
    List<NumberNote> warmth(String what) {
        return with(
                what,
                "highest temperature where the scan saw it, and the time spent warm counted as minutes at 43 °C; the gap was recorded"
                        + " before fluid was placed around the vein",
                "heat." + what + ".peak.red",
                "heat." + what + ".dose.red");
    }

    private List<NumberNote> with(String name, String says, String... limits) {
        List<NumberNote> notes = new ArrayList<>(List.of(NumberNote.computed(name, says, MODEL)));
        notes.addAll(NumberNote.of(List.of(limits), knowledge));
        return notes;
    }
}
