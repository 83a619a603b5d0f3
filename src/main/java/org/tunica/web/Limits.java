package org.tunica.web;

import org.tunica.casefile.FieldReader;

/**
 * How much anyone may ask. The usual values are our own choice: a clinic asks some hundred times an hour.
 *
 * @param perAddressPerMinute requests from one network address
 * @param perCallerPerMinute calls of one record system
 * @param atOnce requests that are worked on at the same time
 */
public record Limits(int perAddressPerMinute, int perCallerPerMinute, int atOnce) {
    /** What holds where nobody said anything; some threads of the server stay free for questions about its health. */
    public static final Limits USUAL = new Limits(3_000, 1_500, 40);

    private static final int MOST_PER_MINUTE = 1_000_000;

    static Limits read(FieldReader reader) {
        return new Limits(
                WholeNumber.read(reader, "perAddressPerMinute", 1, MOST_PER_MINUTE)
                        .orElse(USUAL.perAddressPerMinute),
                WholeNumber.read(reader, "perCallerPerMinute", 1, MOST_PER_MINUTE)
                        .orElse(USUAL.perCallerPerMinute),
                WholeNumber.read(reader, "atOnce", 1, USUAL.atOnce).orElse(USUAL.atOnce));
    }
}
