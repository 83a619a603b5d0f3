package org.tunica.treatment;

/** Refuses numbers that mean nothing, by name and value. */
final class Checked {
    private Checked() {}

    static void positive(String name, double value) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a positive finite number, got " + value);
        }
    }

    static void within(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " must be in " + least + ".." + most + ", got " + value);
        }
    }
}
