package org.tunica.treatment;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers for people: three significant digits, no exponent, no trailing nought. */
final class Rounded {
    private static final MathContext THREE_DIGITS = new MathContext(3);

    private Rounded() {}

    static String text(double value) {
        if (Math.abs(value) >= 1000) {
            return Long.toString(Math.round(value));
        }
        return new BigDecimal(Double.toString(value))
                .round(THREE_DIGITS)
                .stripTrailingZeros()
                .toPlainString();
    }
}
