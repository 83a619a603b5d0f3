package org.tunica.review;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import org.tunica.casefile.UcumWords;

/** Numbers with their units as people read them, without rounding: a reviewer signs the number itself. */
final class Figures {
    private Figures() {}

    static String number(double value) {
        BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
        return exact.signum() == 0 ? "0" : exact.toPlainString();
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
