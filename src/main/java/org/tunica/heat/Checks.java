package org.tunica.heat;

/** Refusals shared by the records of this package: the name and the value, never a clamp. */
final class Checks {
    private Checks() {}

    /** @throws IllegalArgumentException when the value is not a positive number */
    static double positive(String name, double value) {
        if (!Double.isFinite(value) || value <= 0) {
            throw new IllegalArgumentException(name + " must be above 0, got " + value);
        }
        return value;
    }

    /** @throws IllegalArgumentException when the value is negative or not a number */
    static double notNegative(String name, double value) {
        if (!Double.isFinite(value) || value < 0) {
            throw new IllegalArgumentException(name + " must be 0 or more, got " + value);
        }
        return value;
    }

    /** @throws IllegalArgumentException when the value is not a number */
    static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a number, got " + value);
        }
        return value;
    }

    /** @throws IllegalArgumentException when the value lies outside low..high */
    static double within(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(name + " must be in " + low + ".." + high + ", got " + value);
        }
        return value;
    }
}
