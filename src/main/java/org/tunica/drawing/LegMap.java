package org.tunica.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;

/**
 * A schematic leg from the front and from behind, with its segments where vein and level put them. No map of this person: the
 * scan's own drawing comes first.
 *
 * @param limb the leg
 * @param says what to write beside a segment by its name, such as the first choice; may be empty
 */
public record LegMap(Limb limb, Map<String, String> says) {
    public LegMap {
        says = Map.copyOf(says);
    }

    /** The leg as one SVG element. */
    public String svg() {
        return new LegDrawing(this).svg();
    }

    /** The same in sentences, one a segment. */
    public List<String> sentences() {
        return limb.segments().stream().map(this::sentence).toList();
    }

    /** The side in full and in capitals. */
    String side() {
        return limb.side().word().toUpperCase(Locale.ROOT);
    }

    String label(Segment segment) {
        String wide = segment.lumenDiameterMm().isPresent()
                ? Plain.number(segment.lumenDiameterMm().getAsDouble()) + " mm"
                : "width not recorded";
        return segment.ref() + ", " + wide;
    }

    private String sentence(Segment segment) {
        String written = says.getOrDefault(segment.ref(), "");
        return side() + " leg, " + label(segment) + ": " + spoken(segment.vein().word()) + ", "
                + spoken(segment.level().word()) + (written.isEmpty() ? "" : ": " + written) + ".";
    }

    private static String spoken(String word) {
        return word.replace('-', ' ');
    }
}
