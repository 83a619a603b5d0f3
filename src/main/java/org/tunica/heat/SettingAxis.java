package org.tunica.heat;

/**
 * One side of a map of settings: equal steps.
 *
 * @param min first value
 * @param step from one value to the next
 * @param count number of values, at least 2
 */
public record SettingAxis(double min, double step, int count) {
    /** A map needs no more lines of runs than this on one side. */
    private static final int MOST = 33;

    private static final double ROUNDING = 1e-9;

    public SettingAxis {
        Checks.notNegative("min", min);
        Checks.positive("step", step);
        Checks.within("count", count, 2, MOST);
    }

    /** From the smallest value offered to {@code highest}, in half steps or whole multiples of the step offered. */
    static SettingAxis upTo(double highest, HeatLimits.Steps offered) {
        int steps = Math.max(1, (int) Math.floor((highest - offered.min()) / offered.step() + ROUNDING));
        if (2 * steps < MOST) {
            return new SettingAxis(offered.min(), offered.step() / 2, 2 * steps + 1);
        }
        int stride = (steps + MOST - 2) / (MOST - 1);
        return new SettingAxis(offered.min(), stride * offered.step(), steps / stride + 1);
    }

    /** The value at a place, 0 the first. */
    public double at(int i) {
        return min + i * step;
    }

    /** The last value. */
    public double max() {
        return at(count - 1);
    }
}
