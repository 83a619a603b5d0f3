package org.tunica.treatment;

import java.util.OptionalDouble;

/** Whether two ways to the same number agree. */
final class Agreement {
    /** Forgives what binary fractions add. */
    private static final double ROUNDING = 1e-9;

    private Agreement() {}

    /** Whether a recorded number is farther from what it must be than the share allowed. */
    static boolean broken(double expected, double recorded, double share) {
        return Math.abs(recorded - expected) > (share + ROUNDING) * expected;
    }

    /** The same where either may be unknown: then nothing is broken. */
    static boolean broken(OptionalDouble expected, OptionalDouble recorded, double share) {
        return expected.isPresent()
                && recorded.isPresent()
                && broken(expected.getAsDouble(), recorded.getAsDouble(), share);
    }
}
