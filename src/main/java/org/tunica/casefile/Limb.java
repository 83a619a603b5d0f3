package org.tunica.casefile;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One leg with its incompetent segments.
 *
 * @param ankleBrachialIndex ankle pressure over arm pressure
 */
public record Limb(
        Side side,
        Optional<CeapClass> ceapClass,
        OptionalDouble ankleBrachialIndex,
        Optional<DeepVeins> deepVeins,
        List<Segment> segments) {

    public Limb {
        segments = List.copyOf(segments);
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
