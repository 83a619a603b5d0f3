package org.tunica.statistics;

/**
 * What a case adds to a chart: the logarithm of how much better its outcome is explained by odds of failure multiplied by RA than
 * by the odds predicted.
 *
 * <p>Of a failure log(RA / (1 - p + RA p)), of a success log(1 / (1 - p + RA p)), with p the chance of failure predicted (Steiner
 * et al., Biostatistics 2000;1(4):441-452).
 *
 * @param oddsRatio RA: greater than 1 watches for worse results, less than 1 for better
 */
record CusumWeight(double oddsRatio) {
    CusumWeight {
        Checked.positive("oddsRatio", oddsRatio);
        if (oddsRatio == 1) {
            throw new IllegalArgumentException("oddsRatio must not be 1: then there is nothing to watch for");
        }
    }

    double of(double failureProbability, boolean failed) {
        double either = 1 - failureProbability + oddsRatio * failureProbability;
        return Math.log((failed ? oddsRatio : 1) / either);
    }
}
