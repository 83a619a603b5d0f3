package org.tunica.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.SegmentAdvice;
import org.tunica.wording.SettingWords;

/** The computed numbers of a segment, each with its help. */
final class SegmentNotes {
    /** Only a lumen measured lying needs it. */
    private static final String POSTURE = "posture.standing-to-lying";

    private static final String SAME_AREA =
            "arithmetic from the lumen and the thickness of the whole wall of one state: the area of the wall stays the"
                    + " same when the vein widens or narrows";

    private SegmentNotes() {}

    static List<NumberView> of(SegmentAdvice.DerivedAdvice derived, Knowledge knowledge) {
        List<NumberView> numbers = new ArrayList<>();
        numbers.add(new NumberView(
                "lumen relaxed",
                known(derived.relaxedLumenMm(), " mm")
                        + (derived.standingEstimated() ? " (standing, estimated from lying)" : ""),
                lumen(derived.standingEstimated(), knowledge)));
        numbers.add(computed(
                "wall relaxed",
                known(derived.relaxedWallMm(), " mm"),
                "thickness of the whole wall with the vein out of spasm and the patient standing; as measured, where it was"
                        + " measured so",
                SAME_AREA));
        numbers.add(computed(
                "wall pressed shut",
                known(derived.collapsedWallMm(), " mm"),
                "thickness of the wall when fluid around the vein presses its lumen shut; what heat meets is thicker than"
                        + " what the scan saw",
                SAME_AREA));
        numbers.add(computed(
                "lumen volume",
                known(derived.lumenVolumeMl(), " mL"),
                "blood or foam the relaxed lumen holds over the length to be closed",
                "arithmetic: a cylinder of the relaxed lumen and that length"));
        numbers.add(computed(
                "bloodless with tumescence and head-down",
                derived.bloodless().map(yes -> yes ? "yes" : "no").orElse("not known"),
                "whether the vein can be emptied of blood before it is treated",
                "yes where the patient can lie head-down and the table tilts, as recorded"));
        return numbers;
    }

    private static List<NumberNote> lumen(boolean estimated, Knowledge knowledge) {
        List<NumberNote> notes = new ArrayList<>();
        notes.add(NumberNote.computed(
                "lumen relaxed",
                "inner diameter out of spasm with the patient standing, by which rules speak of width",
                estimated
                        ? "the lying lumen as measured, brought upright by the number below"
                        : "as measured; of a vein in spasm the relaxed lumen that was recorded"));
        if (estimated) {
            notes.add(NumberNote.of(knowledge.quantity(POSTURE), knowledge));
        }
        return notes;
    }

    private static NumberView computed(String name, String value, String says, String from) {
        return new NumberView(name, value, List.of(NumberNote.computed(name, says, from)));
    }

    private static String known(OptionalDouble value, String unit) {
        return value.isPresent() ? SettingWords.plain(value.getAsDouble()) + unit : "not known";
    }
}
