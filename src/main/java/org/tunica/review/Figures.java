package org.tunica.review;

import java.math.BigDecimal;
import java.util.Map;

/** Numbers with their units as people read them, without rounding: a reviewer signs the number itself. */
final class Figures {
    /** Units whose UCUM code is no word of the trade. */
    private static final Map<String, String> WORDS =
            Map.of("1", "", "a", " years", "Cel", " \u00b0C", "/cm", " per cm", "%", " %", "kg/m2", " kg/m\u00b2");

    private Figures() {}

    static String number(double value) {
        BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
        return exact.signum() == 0 ? "0" : exact.toPlainString();
    }

    /** A number with its unit; a pure number stands alone. */
    static String with(double value, String unit) {
        return number(value) + WORDS.getOrDefault(unit, " " + unit);
    }

    /** The unit as a word, "a pure number" when there is none. */
    static String unit(String unit) {
        String word = WORDS.getOrDefault(unit, unit).strip();
        return word.isEmpty() ? "a pure number" : word;
    }
}
