package org.tunica.replay;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;
import org.tunica.casefile.UcumWords;
import org.tunica.plan.SettingAdvice;

/** Numbers with their units as people read them; enough digits that two different limits never read alike. */
final class Amounts {
    private Amounts() {}

    static String of(double value, String unit) {
        return plain(value) + UcumWords.behind(unit);
    }

    /** The value, or the range with what is usual in it. */
    static String of(SettingAdvice setting) {
        if (setting.value().isPresent()) {
            return of(setting.value().getAsDouble(), setting.unit());
        }
        boolean range = setting.low().isPresent() && setting.high().isPresent();
        String ends = range
                ? plain(setting.low().getAsDouble()) + " to "
                        + plain(setting.high().getAsDouble())
                : end("from ", setting.low()) + end("up to ", setting.high());
        String usual = end("usually ", setting.typical());
        String separator = ends.isEmpty() || usual.isEmpty() ? "" : ", ";
        return ends + separator + usual + UcumWords.behind(setting.unit());
    }

    private static String end(String words, OptionalDouble value) {
        return value.isPresent() ? words + plain(value.getAsDouble()) : "";
    }

    /** The shortest digits that mean this number, without an exponent. */
    static String plain(double value) {
        return new BigDecimal(Double.toString(value))
                .round(MathContext.DECIMAL64)
                .stripTrailingZeros()
                .toPlainString();
    }
}
