package org.tunica.session;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tunica.casefile.Segment;
import org.tunica.heat.HeatSetting;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.OptionNumbers;
import org.tunica.physics.SegmentalCycles;

/**
 * How long the work on one segment takes, part by part, in minutes: access, fluid, the technique itself. Planning figures;
 * they decide what fits into a session, never what is safe.
 */
final class TimeEstimate {
    private static final double MM_PER_CM = 10;
    private static final double SECONDS_PER_MINUTE = 60;

    private final SessionConstants constants;
    private final Knowledge knowledge;

    TimeEstimate(Knowledge knowledge, SessionConstants constants) {
        this.knowledge = knowledge;
        this.constants = constants;
    }

    /** The parts; empty when the length of the segment is not recorded, for then the time cannot be told. */
    List<TimePart> parts(Technique technique, Segment segment, OptionNumbers numbers) {
        if (segment.lengthCm().isEmpty()) {
            return List.of();
        }
        double lengthCm = segment.lengthCm().getAsDouble();
        List<TimePart> parts = new ArrayList<>();
        switch (technique.family()) {
            case HEAT -> {
                parts.add(access());
                parts.add(heating(technique, lengthCm, numbers));
            }
            case MECHANOCHEMICAL -> {
                parts.add(access());
                parts.add(new TimePart("drawing back", drawnBackMin(technique, lengthCm)));
            }
            case ADHESIVE -> {
                parts.add(access());
                parts.add(new TimePart("placing adhesive and pressing", adhesiveMin(technique, lengthCm)));
            }
            case FOAM -> parts.add(new TimePart("foam", constants.of("session.time.foam")));
            case FOCUSED_ULTRASOUND ->
                parts.add(new TimePart("pulses and cooling", focusedMin(technique, numbers.lesions())));
        }
        numbers.tumescentMl()
                .ifPresent(ml -> parts.add(new TimePart("placing fluid", ml * constants.of("session.time.tumescent"))));
        return parts;
    }

    private TimePart access() {
        return new TimePart("access", constants.of("session.time.access"));
    }

    private TimePart heating(Technique technique, double lengthCm, OptionNumbers numbers) {
        return new TimePart(
                "heating",
                numbers.heat()
                                .flatMap(HeatOutlook::proposed)
                                .map(proposed -> seconds(proposed.setting(), technique, lengthCm))
                                .orElseGet(() -> lengthCm * constants.of("session.time.heat"))
                        / SECONDS_PER_MINUTE);
    }

    private double seconds(HeatSetting setting, Technique technique, double lengthCm) {
        if (setting instanceof HeatSetting.Pulled pulled) {
            return lengthCm * pulled.pullbackSPerCm();
        }
        if (setting instanceof HeatSetting.Held held) {
            return new SegmentalCycles(elementCm(technique), held.cycles(), held.cycles())
                    .seconds(lengthCm, knowledge.value("heat.segmental.cycle"));
        }
        return lengthCm * constants.of("session.time.heat");
    }

    private double elementCm(Technique technique) {
        return knowledge.value("heat." + technique.id().replace("rf-segmental-", "segmental.") + ".length") / MM_PER_CM;
    }

    private static double drawnBackMin(Technique technique, double lengthCm) {
        double mmPerS = technique.settings().get("pullbackMmPerS").low().orElseThrow();
        return MM_PER_CM * lengthCm / mmPerS / SECONDS_PER_MINUTE;
    }

    private double adhesiveMin(Technique technique, double lengthCm) {
        int aliquots = Adhesive.of(technique, knowledge).places(lengthCm).size();
        return constants.of("session.time.adhesive.first")
                + Math.max(0, aliquots - Adhesive.AT_THE_START) * constants.of("session.time.adhesive.next");
    }

    private double focusedMin(Technique technique, OptionalDouble lesions) {
        double pulseS = technique.settings().get("pulseSeconds").high().orElseThrow();
        return lesions.orElseThrow() * (pulseS + constants.of("session.time.cooling")) / SECONDS_PER_MINUTE;
    }
}
