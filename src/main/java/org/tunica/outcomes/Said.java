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

    /** The head of a column of limits. */
    static String limitsOf(double confidenceShare) {
        return "limits " + number(PERCENT * confidenceShare) + " %";
    }

    static String tenths(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /** How often, such as "once in 25 times". */
    static String chance(double probability) {
        if (probability < 0.001) {
            return "less than once in 1000 times";
        }
        return String.format(Locale.ROOT, "%.1f times in 100", PERCENT * probability);
    }

    /** Limits in per cent, or nothing where there are none. */
    static String limits(OptionalDouble low, OptionalDouble high) {
        return low.isPresent() && high.isPresent()
                ? String.format(
                        Locale.ROOT, "%.1f to %.1f %%", PERCENT * low.getAsDouble(), PERCENT * high.getAsDouble())
                : "";
    }

    /** Such as "45 of 50", or why not. */
    static String counted(Counted counted) {
        if (counted.events().isPresent()) {
            return counted.total().orElseThrow() == 0
                    ? "none seen"
                    : counted.events().getAsInt() + " of " + counted.total().getAsInt();
        }
        String few = counted.fewerThan().isPresent()
                ? "fewer than " + counted.fewerThan().getAsInt()
                : "not told";
        return few + (counted.total().isPresent() ? " of " + counted.total().getAsInt() : "");
    }

    /** The share in per cent, or nothing where it is not told. */
    static String share(Counted counted) {
        return counted.share().isPresent() ? percent(counted.share().getAsDouble()) : "";
    }

    /** Its limits, or nothing likewise. */
    static String limits(Counted counted) {
        return limits(counted.lowShare(), counted.highShare());
    }
}
