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

    /** How much more often than in the other, in percentage points; negative when less often. */
    public double pointsAbove(Proportion other) {
        return percent() - other.percent();
    }

    /**
     * How many must be treated this way and not the other for one more event: the inverse of the difference, without its
     * uncertainty.
     *
     * @throws IllegalArgumentException when this is not the more frequent one
     */
    public double numberNeededToTreat(Proportion other) {
        double points = pointsAbove(other);
        Checked.positive("difference", points);
        return PERCENT / points;
    }
}
