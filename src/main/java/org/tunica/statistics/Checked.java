package org.tunica.statistics;

/** Refuses a number outside its range, with its name and value. */
final class Checked {
    private Checked() {}

    static void within(String name, int value, int low, int high) {
        if (value < low || value > high) {
            throw new IllegalArgumentException(name + " must be in " + low + ".." + high + ", got " + value);
        }
    }

    static void atLeast(String name, int value, int low) {
        if (value < low) {
            throw new IllegalArgumentException(name + " must be at least " + low + ", got " + value);
        }
    }

    /** A share that is neither nothing nor all. */
    static void properShare(String name, double value) {
        if (!(value > 0 && value < 1)) {
            throw new IllegalArgumentException(name + " must be between 0 and 1, both excluded, got " + value);
        }
    }

    static void share(String name, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " must be in 0..1, got " + value);
        }
    }

    static void positive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be greater than 0 and finite, got " + value);
        }
    }
}
