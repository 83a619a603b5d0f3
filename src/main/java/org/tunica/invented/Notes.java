package org.tunica.invented;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Technique;

/** Makes up what somebody might have written; every note begins by saying that it is invented. */
final class Notes {
    private static final String INVENTED = "invented: ";
    private static final double DAYS_PER_MONTH = 365.0 / 12;

    private static final Map<Segment.Course, List<String>> WAY = Map.of(
            Segment.Course.STRAIGHT,
            List.of("straight course", "straight, easy to follow", "straight, easy to see"),
            Segment.Course.WINDING,
            List.of("winding course", "winding near its lower end", "bends in the lower part"),
            Segment.Course.VERY_WINDING,
            List.of("very winding course", "very winding, no catheter possible", "many bends near the skin"));

    private static final Map<Family, List<String>> DONE = Map.of(
            Family.HEAT,
            List.of(
                    "fluid placed around the vein before heat",
                    "cool fluid around the vein, no heat felt at the skin",
                    "tip seen before heat",
                    "vein empty in head down position"),
            Family.FOAM,
            List.of(
                    "foam seen in the whole vein",
                    "spasm seen after foam",
                    "foam given slowly",
                    "leg raised before foam"),
            Family.MECHANOCHEMICAL,
            List.of(
                    "wire rotating during pullback, drug given",
                    "wire stopped at a valve, then passed",
                    "little pain without fluid"),
            Family.ADHESIVE,
            List.of(
                    "adhesive placed in aliquots with pressure",
                    "no fluid around the vein, no stocking",
                    "start seen on the scan"),
            Family.FOCUSED_ULTRASOUND,
            List.of(
                    "skin cooled between pulses",
                    "warm feeling at the skin during pulses",
                    "no puncture, vein narrow after the last pulse"));

    private static final List<String> CLOSED = List.of(
            "closed, walking without pain",
            "closed, cord still felt",
            "closed along the whole length, no reflux",
            "closed, less swelling",
            "closed, stocking no longer worn",
            "closed, no symptoms",
            "closed, back to work and sports");

    private static final List<String> OPEN = List.of(
            "open again with reflux",
            "partly open, with reflux",
            "reflux again, heavy leg in the evening",
            "open again, new varicosities",
            "open, treatment again advised");

    List<String> of(Draw draw, List<Given> given, int lastDay) {
        List<String> notes = new ArrayList<>();
        given.forEach(one -> notes.add(INVENTED + scan(draw, one)));
        Given one = given.get(draw.below(given.size()));
        notes.add(INVENTED + pick(draw, DONE.get(one.family())));
        notes.add(INVENTED + vein(one) + ", " + after(lastDay) + " "
                + pick(draw, lastDay < one.failsOnDay() ? CLOSED : OPEN));
        return notes;
    }

    private static String scan(Draw draw, Given one) {
        return vein(one) + ", lumen " + number(one.made().lumenDiameterMm()) + " mm, "
                + pick(draw, WAY.get(one.made().segment().course().orElseThrow())) + ", "
                + number(one.treatedLengthCm()) + " cm treated with " + means(one.technique());
    }

    private static String vein(Given one) {
        Segment segment = one.made().segment();
        String level = segment.level().word().replace('-', ' ');
        return name(segment.vein()) + ", " + level;
    }

    private static String name(Segment.Vein vein) {
        return switch (vein) {
            case GREAT_SAPHENOUS -> "great saphenous vein";
            case SMALL_SAPHENOUS -> "small saphenous vein";
            case ANTERIOR_ACCESSORY -> "anterior accessory vein";
            case POSTERIOR_ACCESSORY -> "posterior accessory vein";
            case THIGH_EXTENSION -> "thigh extension";
            case TRIBUTARY -> "tributary";
            case PERFORATOR -> "perforator";
            case RECURRENT_CHANNEL -> "recurrent vein";
        };
    }

    private static String means(Technique technique) {
        String id = technique.id();
        return switch (technique.family()) {
            case HEAT -> id.startsWith("laser") ? "laser" : id.startsWith("rf") ? "RF" : id.replace("wave", "waves");
            case FOAM -> "foam";
            case MECHANOCHEMICAL -> "rotating wire and drug";
            case ADHESIVE -> "adhesive";
            case FOCUSED_ULTRASOUND -> "focused ultrasound";
        };
    }

    /** In the unit in which people tell it. */
    private static String after(int days) {
        long months = Math.round(days / DAYS_PER_MONTH);
        if (months <= 1) {
            return "after " + days + " days";
        }
        return months < 24 ? "after " + months + " months" : "after " + Math.round(months / 12.0) + " years";
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : String.format(Locale.ROOT, "%.1f", value);
    }

    private static String pick(Draw draw, List<String> texts) {
        return texts.get(draw.below(texts.size()));
    }
}
