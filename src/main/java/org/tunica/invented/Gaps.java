package org.tunica.invented;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;

/** The nearest nerve and its gap, within what the way chosen asks of the gap. */
final class Gaps {
    private final Map<Segment.Level, Curve> any = new EnumMap<>(Segment.Level.class);
    private final Map<Segment.Level, Curve> heated = new EnumMap<>(Segment.Level.class);
    private final Map<Segment.Level, Curve> inFocus = new EnumMap<>(Segment.Level.class);

    Gaps(Knowledge knowledge) {
        double touchingMm = knowledge.value("nerve.gap.touching");
        double nearMm = knowledge.value("nerve.gap.min");
        for (Segment.Level level : Segment.Level.values()) {
            if (level != Segment.Level.ANKLE) {
                Curve curve = Curve.of(knowledge.invented("invented.nerve-gap." + level.word()));
                any.put(level, curve);
                heated.put(level, curve.within(touchingMm, Double.MAX_VALUE));
                inFocus.put(level, curve.within(nearMm, Double.MAX_VALUE));
            }
        }
    }

    Segment.Nerve nerve(Draw draw, MadeLeg.Found found, Optional<Family> family, double unrecordedShare) {
        Map<Segment.Level, Curve> curves = family.map(
                        way -> way == Family.HEAT ? heated : way == Family.FOCUSED_ULTRASOUND ? inFocus : any)
                .orElse(any);
        double gapMm = Made.rounded(curves.get(found.level()).from(draw), 1);
        OptionalDouble recorded = Made.recorded(draw, unrecordedShare, gapMm);
        return new Segment.Nerve(
                recorded.isPresent() ? Optional.of(name(found)) : Optional.empty(), recorded, OptionalDouble.empty());
    }

    private static Segment.Nerve.Name name(MadeLeg.Found found) {
        boolean behind = found.vein() == Segment.Vein.SMALL_SAPHENOUS;
        return switch (found.level()) {
            case GROIN -> Segment.Nerve.Name.FEMORAL;
            case POPLITEAL -> Segment.Nerve.Name.TIBIAL;
            case THIGH, KNEE -> Segment.Nerve.Name.SAPHENOUS;
            case UPPER_CALF, MID_CALF, LOWER_CALF, ANKLE ->
                behind ? Segment.Nerve.Name.SURAL : Segment.Nerve.Name.SAPHENOUS;
        };
    }
}
