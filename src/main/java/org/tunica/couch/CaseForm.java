package org.tunica.couch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tunica.casefile.Fault;

/**
 * The form of a case as a page shows it.
 *
 * @param mends what must be mended, each with the field it is about
 */
public record CaseForm(FormBlock head, FormBlock patient, List<FormBlock.Leg> legs, FormBlock room, List<Mend> mends) {
    /**
     * Something to mend.
     *
     * @param id of the field; empty where it is about no field
     */
    public record Mend(String id, String field, String says) {}

    public CaseForm {
        legs = List.copyOf(legs);
        mends = List.copyOf(mends);
    }

    /** @param faults by names of fields, or by places that are none */
    static CaseForm of(CaseAsks asks, Typed typed, List<Fault> faults) {
        FormFields fields = new FormFields(typed, faults);
        List<FormBlock.Leg> legs = new ArrayList<>();
        FormBlock head = fields.block("", "Case", asks.head());
        FormBlock patient = fields.block("patient", "Patient", asks.patient());
        for (int leg = 0; leg < typed.legs(); leg++) {
            legs.add(leg(fields, asks, typed, leg));
        }
        FormBlock room = fields.block("room", "Room", asks.room());
        return new CaseForm(head, patient, legs, room, fields.mends());
    }

    private static FormBlock.Leg leg(FormFields fields, CaseAsks asks, Typed typed, int leg) {
        String path = Typed.leg(leg);
        String side = typed.text(path + ".side");
        String title = side.isEmpty() ? "Leg, side not chosen yet" : side.toUpperCase(Locale.ROOT) + " leg";
        FormBlock block = fields.block(path, title, asks.limb());
        List<FormBlock> segments = new ArrayList<>();
        for (int at = 0; at < typed.segments(leg); at++) {
            segments.add(fields.block(Typed.segment(leg, at), title(typed, leg, at, title), asks.segment()));
        }
        return new FormBlock.Leg(block, segments);
    }

    private static String title(Typed typed, int leg, int at, String ofLeg) {
        String path = Typed.segment(leg, at);
        String ref = typed.text(path + ".ref");
        String where = List.of("vein", "level").stream()
                .map(field -> typed.text(path + "." + field).replace('-', ' '))
                .filter(word -> !word.isEmpty())
                .reduce((vein, level) -> vein + ", " + level)
                .map(words -> ": " + words)
                .orElse("");
        return "Segment " + (ref.isEmpty() ? String.valueOf(at + 1) : ref) + where + " (" + ofLeg + ")";
    }
}
