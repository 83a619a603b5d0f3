package org.tunica.rules;

/** Three-valued truth: what cannot be told is neither true nor false. */
public enum Truth {
    TRUE,
    FALSE,
    UNKNOWN;

    static Truth of(boolean value) {
        return value ? TRUE : FALSE;
    }

    /** Whether one of the two holds. */
    Truth or(Truth other) {
        if (this == TRUE || other == TRUE) {
            return TRUE;
        }
        return this == UNKNOWN || other == UNKNOWN ? UNKNOWN : FALSE;
    }

    /** The opposite; the opposite of what cannot be told cannot be told. */
    public Truth not() {
        return switch (this) {
            case TRUE -> FALSE;
            case FALSE -> TRUE;
            case UNKNOWN -> UNKNOWN;
        };
    }
}
