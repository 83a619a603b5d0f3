package org.tunica.casefile;

import java.util.List;
import java.util.Optional;

/** Contradictions between parts of a case that are read apart. */
final class CaseChecks {
    private static final Optional<Boolean> YES = Optional.of(true);

    private CaseChecks() {}

    static void check(FieldReader root, Patient patient, List<Limb> limbs) {
        for (int i = 0; i < limbs.size(); i++) {
            outflowIsInTheHistory(root, patient, limbs.get(i), "limbs[" + i + "].trunkIsMainOutflow");
        }
    }

    /** A history is whole: a needed outflow it does not list is a contradiction, not a detail of one leg. */
    private static void outflowIsInTheHistory(FieldReader root, Patient patient, Limb limb, String field) {
        boolean denied = patient.conditions()
                .filter(listed -> !listed.contains(Limb.MAIN_OUTFLOW))
                .isPresent();
        if (denied && limb.trunkIsMainOutflow().equals(YES)) {
            root.fault(field, "is true, while patient.conditions does not list " + Limb.MAIN_OUTFLOW);
        }
    }
}
