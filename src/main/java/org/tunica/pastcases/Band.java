package org.tunica.pastcases;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A band of whole numbers in place of the number itself: {@code 60-69}, {@code under-40}, {@code 90-or-more}. At least one
 * end is closed.
 *
 * @param from the lowest number in it, or no lower end
 * @param to the highest number in it, or no upper end
 */
public record Band(OptionalInt from, OptionalInt to) {
    /** What a band looks like in a file. */
    public static final String PATTERN = "^(\\d{1,3}-\\d{1,3}|under-\\d{1,3}|\\d{1,3}-or-more)$";

    private static final Pattern CLOSED = Pattern.compile("(\\d{1,3})-(\\d{1,3})");
    private static final Pattern BELOW = Pattern.compile("under-(\\d{1,3})");
    private static final Pattern ABOVE = Pattern.compile("(\\d{1,3})-or-more");

    public Band {
        if (from.isEmpty() && to.isEmpty()) {
            throw new IllegalArgumentException("a band needs at least one end");
        }
        if (from.isPresent() && to.isPresent() && from.getAsInt() > to.getAsInt()) {
            throw new IllegalArgumentException(
                    "a band must not end at " + to.getAsInt() + " before " + from.getAsInt());
        }
    }

    /** From one whole number to another, both included. */
    public static Band between(int from, int to) {
        return new Band(OptionalInt.of(from), OptionalInt.of(to));
    }

    /** All below a number. */
    public static Band under(int bound) {
        return new Band(OptionalInt.empty(), OptionalInt.of(bound - 1));
    }

    /** A number and all above it. */
    public static Band orMore(int from) {
        return new Band(OptionalInt.of(from), OptionalInt.empty());
    }

    /** The band as files spell it, or nothing when the text is no band. */
    public static Optional<Band> read(String text) {
        Matcher closed = CLOSED.matcher(text);
        if (closed.matches()) {
            int from = Integer.parseInt(closed.group(1));
            int to = Integer.parseInt(closed.group(2));
            return from <= to ? Optional.of(between(from, to)) : Optional.empty();
        }
        Matcher below = BELOW.matcher(text);
        if (below.matches()) {
            return Optional.of(under(Integer.parseInt(below.group(1))));
        }
        Matcher above = ABOVE.matcher(text);
        return above.matches() ? Optional.of(orMore(Integer.parseInt(above.group(1)))) : Optional.empty();
    }

    /** Whether a whole number lies in it. */
    public boolean holds(int number) {
        return number >= from.orElse(Integer.MIN_VALUE) && number <= to.orElse(Integer.MAX_VALUE);
    }

    /** As files spell it. */
    @Override
    public String toString() {
        if (from.isEmpty()) {
            return "under-" + (to.getAsInt() + 1);
        }
        return to.isEmpty() ? from.getAsInt() + "-or-more" : from.getAsInt() + "-" + to.getAsInt();
    }
}
