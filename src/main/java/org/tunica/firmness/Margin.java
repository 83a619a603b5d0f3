package org.tunica.firmness;

import org.tunica.heat.Interval;

/**
 * How far the warmth of a nerve or of the skin stays from the red line: 1 at the warmth of the body or below, 0 at the red
 * line or beyond. Warmth is drawn on straight lines through its ten, fifty and ninety percent points.
 *
 * @param lowC peak that one draw in ten stays below
 * @param middleC peak in the middle draw
 * @param highC peak that one draw in ten passes
 * @param bestC peak worth 1
 * @param worstC peak worth 0
 */
record Margin(double lowC, double middleC, double highC, double bestC, double worstC) {
    private static final double TENTH = 0.1;
    private static final double HALF = 0.5;

    /** Nothing is warmed. */
    static final Margin FULL = new Margin(0, 0, 0, 0, 1);

    /** Nothing is known; unknown is never good. */
    static final Margin NONE = new Margin(1, 1, 1, 0, 1);

    static Margin of(Interval peakC, double bestC, double worstC) {
        return new Margin(peakC.p10(), peakC.p50(), peakC.p90(), bestC, worstC);
    }

    /** Worth at a probability of warmth, 0 to 1. */
    double at(double probability) {
        double slope = (probability < HALF ? middleC - lowC : highC - middleC) / (HALF - TENTH);
        double peakC = middleC + slope * (probability - HALF);
        return Math.max(0, Math.min(1, (worstC - peakC) / (worstC - bestC)));
    }
}
