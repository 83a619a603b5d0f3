package org.tunica.casefile;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One leg with its incompetent segments.
 *
 * @param ankleBrachialIndex ankle pressure over arm pressure
 * @param anklePressureMmHg systolic pressure at the ankle, the higher of its arteries
 * @param toePressureMmHg systolic pressure at the big toe
 * @param trunkIsMainOutflow whether the blood of this leg leaves it mainly by its trunk; unknown lets the history speak for
 *     both legs
 */
public record Limb(
        Side side,
        Optional<CeapClass> ceapClass,
        OptionalDouble ankleBrachialIndex,
        OptionalDouble anklePressureMmHg,
        OptionalDouble toePressureMmHg,
        Optional<DeepVeins> deepVeins,
        Optional<Boolean> trunkIsMainOutflow,
        List<Segment> segments) {

    /** The condition of a patient which says so of a leg without saying of which. */
    static final String MAIN_OUTFLOW = "trunk-is-main-outflow";

    public Limb {
        segments = List.copyOf(segments);
    }

    /** Whether the trunk is the main way out of this leg: what is recorded of the leg, else what the history says. */
    public Optional<Boolean> trunkIsMainOutflow(Patient patient) {
        return trunkIsMainOutflow.or(() -> patient.conditions().map(listed -> listed.contains(MAIN_OUTFLOW)));
    }

    /** Left or right. */
    public enum Side implements Word {
        LEFT,
        RIGHT
    }

    /** Clinical class, CEAP 2020. */
    public enum CeapClass implements Word {
        C0("C0"),
        C1("C1"),
        C2("C2"),
        C2R("C2r"),
        C3("C3"),
        C4A("C4a"),
        C4B("C4b"),
        C4C("C4c"),
        C5("C5"),
        C6("C6"),
        C6R("C6r");

        private final String word;

        CeapClass(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    /** The deep veins of the limb. */
    public enum DeepVeins implements Word {
        NORMAL,
        REFLUXING,
        OBSTRUCTED,
        ACUTE_THROMBOSIS
    }
}
