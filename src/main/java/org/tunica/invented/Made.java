package org.tunica.invented;

import java.util.OptionalDouble;

/** Numbers as a scan, a scale or a pump would show them. */
final class Made {
    private Made() {}

    /** Rounded to so many decimals. */
    static double rounded(double value, int decimals) {
        double factor = decimals == 0 ? 1 : decimals == 1 ? 10 : 100;
        return Math.rint(value * factor) / factor;
    }

    /** A number that a share of the records leaves out. */
    static OptionalDouble recorded(Draw draw, double unrecordedShare, double value) {
        return draw.happens(unrecordedShare) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
