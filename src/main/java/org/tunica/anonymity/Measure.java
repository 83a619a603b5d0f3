package org.tunica.anonymity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Finds a number with its unit, written as one chunk or as two. */
final class Measure {
    private static final String NUMBER = "(?:0|[1-9]\\d{0,3})(?:[.,]\\d{1,3})?";
    private static final Pattern NUMBERS = Pattern.compile("(" + NUMBER + ")(?:[-\u2013](" + NUMBER + "))?");
    private static final Pattern GLUED = Pattern.compile("(" + NUMBER + "(?:[-\u2013]" + NUMBER + ")?)-?([^\\d.,-].*)");

    /** Files of knowledge are plain letters, notes are not. */
    private static final String DEGREES = "\u00b0C";

    private final Vocabulary vocabulary;

    Measure(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** The unit's rule, when the chunk is a number and its unit in one. */
    Optional<UnitSpan> glued(Chunk chunk) {
        Matcher glued = GLUED.matcher(chunk.core());
        return glued.matches() ? span(glued.group(1), glued.group(2)) : Optional.empty();
    }

    /** The unit's rule, when the first chunk is a number, the second its unit, and no mark stands between them. */
    Optional<UnitSpan> parted(Chunk number, Chunk unit) {
        return number.behind().isEmpty() && unit.before().isEmpty()
                ? span(number.core(), unit.core())
                : Optional.empty();
    }

    private Optional<UnitSpan> span(String numbers, String unit) {
        Optional<UnitSpan> span = Optional.ofNullable(vocabulary.units().get(unit.replace(DEGREES, "Cel")));
        Matcher each = NUMBERS.matcher(numbers);
        return each.matches()
                ? span.filter(known -> holds(known, each.group(1)) && holds(known, each.group(2)))
                : Optional.empty();
    }

    private static boolean holds(UnitSpan span, @Nullable String number) {
        return number == null || span.holds(number.replace(',', '.'));
    }
}
