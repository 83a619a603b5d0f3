package org.tunica.firmness;

import java.util.SplittableRandom;

/** Values that are the same in every draw, all options of one tier. */
record FixedValues(int options, int criteria, double... worth) implements CriteriaDraws {
    @Override
    public void fill(int draw, SplittableRandom random, double[] values, int[] tiers) {
        System.arraycopy(worth, 0, values, 0, worth.length);
    }
}
