package org.tunica.physics;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;

/**
 * From which width on a trunk takes strong foam, and how strong. The rule that sets the strength names the same two
 * quantities, so the dose shown belongs to the strength shown.
 *
 * @param overLumenMm relaxed lumen above which foam is strong, mm
 * @param percent strength of strong foam, per cent
 */
record StrongFoam(double overLumenMm, double percent) {
    /** The ids in knowledge/, in the order of the components. */
    static final List<String> IDS = List.of("foam.lumen.wide", "foam.strength.strong");

    private static final Set<Segment.Vein> NO_TRUNKS =
            Set.of(Segment.Vein.TRIBUTARY, Segment.Vein.PERFORATOR, Segment.Vein.RECURRENT_CHANNEL);

    /** As a release has it. */
    static StrongFoam of(Knowledge knowledge) {
        return new StrongFoam(knowledge.value(IDS.get(0)), knowledge.value(IDS.get(1)));
    }

    boolean isFor(Segment.Vein vein, OptionalDouble relaxedLumenMm) {
        return !NO_TRUNKS.contains(vein) && relaxedLumenMm.isPresent() && relaxedLumenMm.getAsDouble() > overLumenMm;
    }
}
