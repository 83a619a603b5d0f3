package org.tunica.firmness;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers of an output: shares to thousandths, measurements to three digits; more would claim what draws cannot give. */
final class Shares {
    private static final int PLACES = 3;
    private static final MathContext DIGITS = new MathContext(PLACES);
    private static final double PERCENT = 100;

    private Shares() {}

    static double rounded(double share) {
        return new BigDecimal(share).setScale(PLACES, RoundingMode.HALF_EVEN).doubleValue();
    }

    static double readable(double value) {
        return new BigDecimal(value).round(DIGITS).doubleValue();
    }

    /** "83 %", and never 0 or 100 for what is not quite. */
    static String percent(double share) {
        if (share > 0 && share < 1 / PERCENT) {
            return "under 1 %";
        }
        if (share < 1 && share > 1 - 1 / PERCENT) {
            return "over 99 %";
        }
        return Math.round(PERCENT * share) + " %";
    }
}
