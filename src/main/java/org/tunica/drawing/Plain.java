package org.tunica.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they are read aloud: no trailing zero, no more digits than a scan can give. */
final class Plain {
    private Plain() {}

    /** At most two decimals. */
    static String number(double value) {
        return rounded(value, 2);
    }

    /** At most one decimal. */
    static String tenths(double value) {
        return rounded(value, 1);
    }

    static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static String rounded(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
