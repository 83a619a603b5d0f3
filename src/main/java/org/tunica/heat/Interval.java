package org.tunica.heat;

import java.util.Arrays;

/** Ten, fifty and ninety percent points of a spread, in the unit of what is spread. */
public record Interval(double p10, double p50, double p90) {
    /** From drawn values, straight lines between the sorted ones. */
    static Interval of(double[] drawn) {
        double[] sorted = drawn.clone();
        Arrays.sort(sorted);
        return new Interval(point(sorted, 0.1), point(sorted, 0.5), point(sorted, 0.9));
    }

    /** Every point times a factor. */
    Interval times(double factor) {
        return new Interval(p10 * factor, p50 * factor, p90 * factor);
    }

    private static double point(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int i = Math.min((int) place, sorted.length - 1);
        double next = sorted[Math.min(i + 1, sorted.length - 1)];
        return sorted[i] + (place - i) * (next - sorted[i]);
    }
}
