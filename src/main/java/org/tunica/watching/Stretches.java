package org.tunica.watching;

import java.time.Duration;
import java.time.Instant;

/**
 * Two stretches of time, the one right after the other.
 *
 * @param from where the earlier one begins
 * @param turn where it ends and the later one begins
 * @param to where that ends; not in it
 */
public record Stretches(Instant from, Instant turn, Instant to) {
    public Stretches {
        if (!from.isBefore(turn) || !turn.isBefore(to)) {
            throw new IllegalArgumentException("stretches follow each other, got " + from + ", " + turn + ", " + to);
        }
    }

    /** The days up to a moment, and the days before those. */
    public static Stretches endingAt(Instant to, int days, int daysBefore) {
        Instant turn = to.minus(Duration.ofDays(days));
        return new Stretches(turn.minus(Duration.ofDays(daysBefore)), turn, to);
    }

    boolean lately(Instant at) {
        return !at.isBefore(turn) && at.isBefore(to);
    }

    boolean before(Instant at) {
        return !at.isBefore(from) && at.isBefore(turn);
    }
}
