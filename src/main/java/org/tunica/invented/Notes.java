package org.tunica.invented;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;

/** Makes up what somebody might have written; every note begins by saying that it is invented. */
final class Notes {
    private static final String INVENTED = "invented: ";

    private static final Map<Segment.Course, List<String>> WAY = Map.of(
            Segment.Course.STRAIGHT,
            List.of("straight course", "straight, easy to follow", "straight within its fascia"),
            Segment.Course.WINDING,
            List.of("winding course", "winding, catheter with care", "bends in the lower part"),
            Segment.Course.VERY_WINDING,
            List.of("very winding course", "very winding, no way for a catheter", "many bends near the skin"));

    private static final Map<Family, List<String>> DONE = Map.of(
            Family.HEAT,
            List.of(
                    "fluid placed all around the vein before heat",
                    "cool fluid around the vein, no heat felt at the skin",
                    "tip seen below the junction before heat",
                    "heat given from the junction down",
                    "vein collapsed by fluid and head down position"),
            Family.FOAM,
            List.of(
                    "foam seen to fill the vein",
                    "spasm seen after foam",
                    "foam held back from the junction by pressure",
                    "leg raised before foam"),
            Family.MECHANOCHEMICAL,
            List.of(
                    "wire turned and drug given during pullback",
                    "wire caught once at a valve, then free",
                    "little pain without fluid"),
            Family.ADHESIVE,
            List.of(
                    "adhesive in aliquots with pressure by hand",
                    "no fluid around the vein, no stocking",
                    "start well below the junction"),
            Family.FOCUSED_ULTRASOUND,
            List.of(
                    "focus on the wall, pauses for cooling",
                    "warm feeling at the skin during pulses",
                    "no puncture, vein narrow after the last pulse"));

    private static final List<String> CLOSED = List.of(
            "closed at the last scan, leg feels light",
            "closed, walks without pain",
            "closed, cord still felt",
            "closed along its length, no reflux",
            "closed, swelling less than before",
            "closed, stocking no longer worn");

    private static final List<String> OPEN = List.of(
            "open again with reflux",
            "open in part, reflux at the thigh",
            "reflux came back, heavy leg in the evening",
            "open again, new varicose veins at the calf");

    List<String> of(Draw draw, List<Given> given, int lastDay) {
        List<String> notes = new ArrayList<>();
        given.forEach(one -> notes.add(INVENTED + scan(draw, one)));
        Given one = given.get(draw.below(given.size()));
        notes.add(INVENTED + pick(draw, DONE.get(one.family())));
        notes.add(INVENTED + one.ref() + " " + pick(draw, lastDay < one.failsOnDay() ? CLOSED : OPEN) + " after "
                + lastDay + " days");
        return notes;
    }

    private static String scan(Draw draw, Given one) {
        Segment segment = one.made().segment();
        String vein = segment.vein().word().replace('-', ' ')
                + (segment.vein() == Segment.Vein.TRIBUTARY
                                || segment.vein() == Segment.Vein.PERFORATOR
                                || segment.vein() == Segment.Vein.RECURRENT_CHANNEL
                        ? ""
                        : " vein");
        return one.ref() + " " + vein + ", " + segment.level().word().replace('-', ' ') + ", lumen "
                + number(one.made().lumenDiameterMm()) + " mm, "
                + pick(draw, WAY.get(segment.course().orElseThrow()))
                + ", " + number(one.treatedLengthCm()) + " cm treated by "
                + one.technique().says();
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : String.format(Locale.ROOT, "%.1f", value);
    }

    private static String pick(Draw draw, List<String> texts) {
        return texts.get(draw.below(texts.size()));
    }
}
