package org.tunica.session;

/**
 * Amounts as whole steps of a thousandth: what is taken is rounded up, what is allowed is rounded down, so that a sum of
 * steps within the limit is a sum of amounts within the limit.
 */
final class Steps {
    private static final double PER_UNIT = 1000;

    /** Binary fractions of decimal numbers stray by less than this many steps. */
    private static final double STRAY = 1e-6;

    private static final int MOST = 1_000_000_000;

    private Steps() {}

    static int up(double amount) {
        return (int) Math.min(MOST, Math.ceil(amount * PER_UNIT - STRAY));
    }

    static int down(double limit) {
        return (int) Math.min(MOST, Math.floor(limit * PER_UNIT + STRAY));
    }
}
