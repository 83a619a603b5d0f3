package org.tunica.treatment;

import java.util.Optional;
import org.tunica.casefile.Word;

/**
 * Something that went wrong after a closure. Both scales are from memory, unverified (S-0012 and papers of societies); the
 * events after foam follow S-0005.
 *
 * @param grade how grave in words
 * @param clavienDindo how grave by what it took to treat
 */
public record Complication(Kind kind, Optional<Grade> grade, Optional<ClavienDindo> clavienDindo) {

    /** Whether both scales are given and one says death while the other does not. */
    boolean contradictory() {
        return grade.isPresent()
                && clavienDindo.isPresent()
                && (grade.get() == Grade.DEATH) != (clavienDindo.get() == ClavienDindo.V);
    }

    /** What it was. */
    public enum Kind implements Word {
        BRUISE,
        BLEEDING,
        SKIN_BURN,
        SKIN_NECROSIS,
        PIGMENTATION,
        MATTING,
        SUPERFICIAL_PHLEBITIS,
        SENSORY_NERVE_INJURY,
        MOTOR_NERVE_INJURY,
        DEEP_VEIN_THROMBOSIS,
        PULMONARY_EMBOLISM,
        INFECTION,
        ALLERGIC_REACTION,
        ADHESIVE_HYPERSENSITIVITY,
        GRANULOMA,
        COUGH,
        CHEST_TIGHTNESS,
        HEADACHE,
        MIGRAINE,
        VISUAL_DISTURBANCE,
        SEIZURE,
        TRANSIENT_ISCHAEMIC_ATTACK,
        STROKE,
        MYOCARDIAL_INFARCTION,
        ARTERIOVENOUS_FISTULA,
        DEVICE_LEFT_BEHIND,
        OTHER
    }

    /** How grave. */
    public enum Grade implements Word {
        MILD,
        MODERATE,
        SEVERE,
        LIFE_THREATENING,
        DEATH
    }

    /** How grave by what it took to treat it. */
    public enum ClavienDindo implements Word {
        I,
        II,
        III,
        IV,
        V;

        @Override
        public String word() {
            return name();
        }
    }
}
