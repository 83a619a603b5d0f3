package org.tunica.outcomes;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalDouble;
import org.tunica.casefile.Word;

/** Numbers and words as they stand in a text. */
final class Said {
    private static final double PERCENT = 100;

    private Said() {}

    /** As short as it is exact. */
    static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    static String words(Word word) {
        return word.word().replace('-', ' ');
    }

    /** A share in per cent, one decimal. */
    static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", PERCENT * share);
    }

    /** Limits in per cent, or nothing where there are none. */
    static String limits(OptionalDouble low, OptionalDouble high) {
        return low.isPresent() && high.isPresent()
                ? String.format(
                        Locale.ROOT, "%.1f to %.1f %%", PERCENT * low.getAsDouble(), PERCENT * high.getAsDouble())
                : "";
    }

    /** Such as "45 of 50, 90.0 % (78.6 to 95.7 %)", or why not. */
    static String count(Counted counted) {
        if (counted.share().isPresent()) {
            return counted.events().orElseThrow() + " of " + counted.total().orElseThrow() + ", "
                    + percent(counted.share().getAsDouble()) + " ("
                    + limits(counted.lowShare(), counted.highShare()) + ")";
        }
        if (counted.events().isPresent()) {
            return "none seen";
        }
        return counted.fewerThan().isPresent()
                ? "fewer than " + counted.fewerThan().getAsInt()
                        + (counted.total().isPresent()
                                ? " of " + counted.total().getAsInt()
                                : "")
                : "not told";
    }
}
