package org.tunica.treatment;

/**
 * Events among all that were followed.
 *
 * @param events how many had it
 * @param total how many were followed
 */
public record Proportion(int events, int total) {
    private static final double PERCENT = 100;

    public Proportion {
        Checked.positive("total", total);
        Checked.within("events", events, 0, total);
    }

    /** Share in per cent. */
    public double percent() {
        return PERCENT * events / total;
    }
}
