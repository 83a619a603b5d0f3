package org.tunica.mutation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Mutants that say the same as the rule, so that no case can tell them apart; each with the reason. */
final class EquivalentMutants {
    private static final String EVERY_TECHNIQUE =
            "every technique of the release needs it, so the condition holds always";
    private static final String ONLY_HEAT =
            "the finding rests on what the heat model foresees, so no other technique ever has it";
    private static final String LACKS_HEAT = ": lacks \"the technique works by heat\"";

    private EquivalentMutants() {}

    /** Reasons by the name of the mutant. */
    static Map<String, String> reasons() {
        Map<String, String> reasons = new HashMap<>();
        reasons.put("NEE-002: lacks \"the technique needs the lumen diameter\"", EVERY_TECHNIQUE);
        reasons.put("NEE-007: lacks \"the technique needs the lumen diameter\"", EVERY_TECHNIQUE);
        reasons.put("NEE-011: lacks \"the technique needs the state of the deep veins\"", EVERY_TECHNIQUE);
        List.of("CAU-058", "CAU-059", "CAU-060", "CAU-061", "PRE-039", "PRE-040")
                .forEach(id -> reasons.put(id + LACKS_HEAT, ONLY_HEAT));
        return Map.copyOf(reasons);
    }
}
