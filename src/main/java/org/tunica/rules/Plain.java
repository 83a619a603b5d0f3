package org.tunica.rules;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as people read them: four significant digits at most, no trailing zeros, no exponent. */
final class Plain {
    private static final MathContext FOUR_DIGITS = new MathContext(4);

    private Plain() {}

    static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(FOUR_DIGITS).stripTrailingZeros();
        return rounded.toPlainString();
    }
}
