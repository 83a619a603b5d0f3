package org.tunica.outcomes;

import org.tunica.casefile.Word;
import org.tunica.treatment.HeatInducedThrombusClass;

/** What was seen at the deep end of a treated vein at its worst, by the classes of clots (S-0043), from good to grave. */
public enum DeepEnd implements Word {
    NO_CLOT,
    CLASS_I,
    CLASS_II,
    /** Into the deep vein, and how much of it was filled is not recorded. */
    CLASS_NOT_TOLD,
    /** Exactly half of the deep vein, for which no class is defined. */
    CLASS_UNDEFINED,
    CLASS_III,
    CLASS_IV;

    static DeepEnd of(HeatInducedThrombusClass found) {
        return switch (found) {
            case I -> CLASS_I;
            case II -> CLASS_II;
            case UNDEFINED -> CLASS_UNDEFINED;
            case III -> CLASS_III;
            case IV -> CLASS_IV;
        };
    }
}
