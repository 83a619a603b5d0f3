package org.tunica.casefile;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What is known of the patient; every part may be unknown.
 *
 * @param allergies ids of allergies; known and empty means none
 * @param conditions ids of conditions; known and empty means none
 * @param preferences what the patient would rather have; known and empty means asked and none
 */
public record Patient(
        OptionalDouble ageYears,
        Optional<Sex> sex,
        OptionalDouble weightKg,
        OptionalDouble heightCm,
        Optional<Boolean> pregnant,
        Optional<Boolean> breastfeeding,
        Optional<Anticoagulation> anticoagulation,
        Optional<Mobility> mobility,
        Optional<Boolean> needleAversion,
        CanLie canLie,
        Optional<Set<String>> allergies,
        Optional<Set<String>> conditions,
        Optional<Set<Preference>> preferences) {

    /** What a patient would rather have; it moves points and weights and never what is safe. */
    public enum Preference implements Word {
        AVOID_NEEDLES,
        AVOID_REPEAT
    }

    /** Sex as recorded. */
    public enum Sex implements Word {
        FEMALE,
        MALE,
        OTHER
    }

    /** Strength of drug anticoagulation. */
    public enum Anticoagulation implements Word {
        NONE,
        PROPHYLACTIC,
        THERAPEUTIC
    }

    /** How the patient moves about. */
    public enum Mobility implements Word {
        WALKS,
        LIMITED,
        BEDBOUND
    }

    /** The positions the patient can hold for a procedure. */
    public record CanLie(Optional<Boolean> headDown, Optional<Boolean> flat, Optional<Boolean> prone) {}
}
