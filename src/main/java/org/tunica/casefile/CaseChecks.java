package org.tunica.casefile;

import java.util.List;
import java.util.Optional;

/** Contradictions between parts of a case that are read apart. */
final class CaseChecks {
    private static final Optional<Boolean> YES = Optional.of(true);

    private CaseChecks() {}

    static void check(Patient patient, List<Limb> limbs, Faults faults) {
        if (patient.sex().equals(Optional.of(Patient.Sex.MALE))) {
            notOfMen("pregnant", patient.pregnant(), faults);
            notOfMen("breastfeeding", patient.breastfeeding(), faults);
        }
        for (int i = 0; i < limbs.size(); i++) {
            outflowIsInTheHistory(patient, limbs.get(i), "$.limbs[" + i + "].trunkIsMainOutflow", faults);
        }
    }

    /** One of the two is wrong, and which one decides whether anything may be done at all. */
    private static void notOfMen(String field, Optional<Boolean> flag, Faults faults) {
        if (flag.equals(YES)) {
            faults.add(
                    "$.patient." + field, "is true of a patient recorded as male; record the sex as other if it is so");
        }
    }

    /** A history is whole: a needed outflow it does not list is a contradiction, not a detail of one leg. */
    private static void outflowIsInTheHistory(Patient patient, Limb limb, String place, Faults faults) {
        boolean denied = patient.conditions()
                .filter(listed -> !listed.contains(Limb.MAIN_OUTFLOW))
                .isPresent();
        if (denied && limb.trunkIsMainOutflow().equals(YES)) {
            faults.add(place, "is true, while patient.conditions does not list " + Limb.MAIN_OUTFLOW);
        }
    }
}
