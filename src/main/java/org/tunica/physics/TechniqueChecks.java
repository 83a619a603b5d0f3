package org.tunica.physics;

import java.util.List;
import java.util.Set;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Nearest;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;

/** Whether the models can answer for every technique of a release, told at the start and not at the first case. */
final class TechniqueChecks {
    private final Knowledge knowledge;
    private final Set<String> heatDevices;
    private final Faults faults = new Faults();

    /** @param heatDevices ids of the devices the heat model knows */
    TechniqueChecks(Knowledge knowledge, Set<String> heatDevices) {
        this.knowledge = knowledge;
        this.heatDevices = heatDevices;
    }

    /** @throws org.tunica.casefile.FaultyInput with every fault by file and key */
    void check() {
        knowledge.techniques().values().forEach(this::technique);
        HeatPlanner.WITH_USUAL_ERROR.stream()
                .filter(path -> knowledge.measurements().get(path).sd().isEmpty())
                .forEach(path -> faults.add("knowledge/measurements.yaml: " + path + ".sd", "must be given"));
        faults.throwIfAny("knowledge");
    }

    private void technique(Technique technique) {
        String file = "knowledge/techniques/" + technique.id() + ".yaml: ";
        taken(technique.family()).stream()
                .filter(key -> !technique.quantities().containsKey(key))
                .forEach(key -> faults.add(
                        file + "quantities." + key,
                        "must be given for the family " + technique.family().word()));
        if (technique.family() == Family.HEAT && !heatDevices.contains(technique.id())) {
            faults.add(file + "id", "is no device of the heat model" + Nearest.hint(technique.id(), heatDevices));
        }
    }

    /** What {@link OptionCalculator} takes from a technique. */
    private static List<String> taken(Family family) {
        return switch (family) {
            case HEAT -> List.of("tumescentMlPerCm");
            case FOAM -> List.of("gasPartsPerLiquidPart", "killDepthMm");
            case MECHANOCHEMICAL -> List.of("drugMlPerCm", "killDepthMm");
            case FOCUSED_ULTRASOUND ->
                List.of("focusWidthMm", "focusHeightMm", "lesionSpacingMm", "tumescentMlPerCm", "tumescentShare");
            case ADHESIVE -> List.of();
        };
    }
}
