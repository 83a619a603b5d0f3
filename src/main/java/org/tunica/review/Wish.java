package org.tunica.review;

import org.tunica.rules.Truth;

/** What a condition, or a rule, is wanted to be. */
enum Wish {
    TRUE,
    FALSE,
    NOT_TRUE,
    NOT_FALSE;

    boolean accepts(Truth truth) {
        return switch (this) {
            case TRUE -> truth == Truth.TRUE;
            case FALSE -> truth == Truth.FALSE;
            case NOT_TRUE -> truth != Truth.TRUE;
            case NOT_FALSE -> truth != Truth.FALSE;
        };
    }

    /** What must be wished of a statement to have this of its denial. */
    Wish ofDenial() {
        return switch (this) {
            case TRUE -> FALSE;
            case FALSE -> TRUE;
            case NOT_TRUE -> NOT_FALSE;
            case NOT_FALSE -> NOT_TRUE;
        };
    }

    /** Whether one of several statements is enough to have this of their disjunction. */
    boolean oneIsEnough() {
        return this == TRUE || this == NOT_FALSE;
    }
}
