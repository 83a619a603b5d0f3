package org.tunica.invented;

import java.util.OptionalDouble;
import org.tunica.casefile.Segment;

/** Which segments begin at a junction with the deep veins. */
final class Junctions {
    private static final OptionalDouble AT_IT = OptionalDouble.of(0);

    private Junctions() {}

    /** From the upper end to the deep junction; not recorded where the segment begins elsewhere. */
    static OptionalDouble distanceCm(MadeLeg.Found found) {
        boolean at = switch (found.vein()) {
            case GREAT_SAPHENOUS -> found.level() == Segment.Level.THIGH;
            case ANTERIOR_ACCESSORY -> found.level() == Segment.Level.GROIN;
            case SMALL_SAPHENOUS -> found.level() == Segment.Level.POPLITEAL;
            case PERFORATOR -> true;
            case POSTERIOR_ACCESSORY, THIGH_EXTENSION, TRIBUTARY, RECURRENT_CHANNEL -> false;
        };
        return at ? AT_IT : OptionalDouble.empty();
    }
}
