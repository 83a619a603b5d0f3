package org.tunica.web;

import java.time.Duration;
import org.tunica.casefile.FieldReader;

/**
 * How long somebody stays signed in, and how often one may fail. The usual values follow common practice for health records:
 * a quarter of an hour idle, twelve hours at most (NIST SP 800-63B asks for half an hour and twelve hours; from memory,
 * unverified).
 *
 * @param mostFailures so many in a row lock an account
 * @param lock for so long
 * @param idle without a request for so long ends a session
 * @param longest for so long lasts a session at most
 * @param linkLife how long a link to set a password can be used
 * @param firstLinkLife the same of the link of the first start
 * @param hashCost cost of the hash of a password, as a power of two
 */
public record SignInRules(
        int mostFailures,
        Duration lock,
        Duration idle,
        Duration longest,
        Duration linkLife,
        Duration firstLinkLife,
        int hashCost) {

    /** What holds where nobody said anything. */
    public static final SignInRules USUAL = new SignInRules(
            5,
            Duration.ofMinutes(15),
            Duration.ofMinutes(15),
            Duration.ofHours(12),
            Duration.ofHours(24),
            Duration.ofHours(1),
            12);

    private static final int MINUTES_OF_A_DAY = 1_440;
    private static final int HOURS_OF_A_WEEK = 168;

    static SignInRules read(FieldReader reader) {
        SignInRules read = new SignInRules(
                WholeNumber.read(reader, "mostFailures", 3, 20).orElse(USUAL.mostFailures),
                minutes(reader, "lockMin", USUAL.lock),
                minutes(reader, "idleMin", USUAL.idle),
                hours(reader, "longestH", USUAL.longest),
                hours(reader, "linkH", USUAL.linkLife),
                minutes(reader, "firstLinkMin", USUAL.firstLinkLife),
                WholeNumber.read(reader, "hashCost", 10, 16).orElse(USUAL.hashCost));
        if (read.idle.compareTo(read.longest) > 0) {
            reader.fault("idleMin", "must not be longer than longestH");
        }
        reader.done();
        return read;
    }

    private static Duration minutes(FieldReader reader, String field, Duration usual) {
        return WholeNumber.read(reader, field, 1, MINUTES_OF_A_DAY)
                .map(Duration::ofMinutes)
                .orElse(usual);
    }

    private static Duration hours(FieldReader reader, String field, Duration usual) {
        return WholeNumber.read(reader, field, 1, HOURS_OF_A_WEEK)
                .map(Duration::ofHours)
                .orElse(usual);
    }
}
