package org.tunica.mutation;

import java.util.Map;

/** Mutants that say the same as the rule, so that no case can tell them apart; each with the reason. */
final class EquivalentMutants {
    private static final String EVERY_TECHNIQUE =
            "every technique of the release needs it, so the condition holds always";

    private EquivalentMutants() {}

    /** Reasons by the name of the mutant. */
    static Map<String, String> reasons() {
        return Map.of(
                "NEE-002: lacks \"the technique needs the lumen diameter\"", EVERY_TECHNIQUE,
                "NEE-007: lacks \"the technique needs the lumen diameter\"", EVERY_TECHNIQUE,
                "NEE-011: lacks \"the technique needs the state of the deep veins\"", EVERY_TECHNIQUE);
    }
}
