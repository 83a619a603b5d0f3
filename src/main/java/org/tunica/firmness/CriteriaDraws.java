package org.tunica.firmness;

import java.util.SplittableRandom;

/** Where the values of options come from, draw by draw. The same draw and generator give the same values. */
interface CriteriaDraws {
    /** Number of options. */
    int options();

    /** Number of criteria. */
    int criteria();

    /**
     * Fills in one draw.
     *
     * @param draw its number, from 0
     * @param random what chance it takes, always as many numbers
     * @param values worth of option i by criterion j at {@code i * criteria + j}, 0 worst to 1 best
     * @param tiers for each option its place by what no worth can outweigh, the smaller the better
     */
    void fill(int draw, SplittableRandom random, double[] values, int[] tiers);
}
