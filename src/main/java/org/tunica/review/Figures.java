package org.tunica.review;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import org.tunica.casefile.UcumWords;

/** Numbers with their units as people read them, without rounding: a reviewer signs the number itself. */
final class Figures {
    /** Powers of ten up to which people rather read all digits. */
    private static final int PLAIN_POWERS = 6;

    private Figures() {}

    static String number(double value) {
        BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
        if (exact.signum() == 0) {
            return "0";
        }
        int power = exact.precision() - exact.scale() - 1;
        return Math.abs(power) <= PLAIN_POWERS
                ? exact.toPlainString()
                : exact.movePointLeft(power).toPlainString() + " x 10^" + power;
    }

    /** A number with its unit (UCUM); a pure number stands alone. */
    static String with(double value, String unit) {
        return number(value) + UcumWords.behind(unit);
    }

    /** A range of which either end may be missing, with its unit; empty when both are. */
    static String range(OptionalDouble low, OptionalDouble high, String unit) {
        if (low.isPresent() && high.isPresent()) {
            return number(low.getAsDouble()) + " to " + with(high.getAsDouble(), unit);
        }
        if (low.isPresent()) {
            return "from " + with(low.getAsDouble(), unit);
        }
        return high.isPresent() ? "up to " + with(high.getAsDouble(), unit) : "";
    }

    /** The unit as a word. */
    static String unit(String unit) {
        String word = UcumWords.behind(unit).strip();
        return word.isEmpty() ? "pure number" : word;
    }
}
