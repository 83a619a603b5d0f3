package org.tunica.statistics;

import java.util.List;
import java.util.SplittableRandom;

/** A mix of cases with what each adds to a chart; one for all runs, for a mix may be as long as the runs are many. */
final class WeightedMix {
    private final double[] chances;
    private final double[] ofFailure;
    private final double[] ofSuccess;

    private WeightedMix(double[] chances, double[] ofFailure, double[] ofSuccess) {
        this.chances = chances;
        this.ofFailure = ofFailure;
        this.ofSuccess = ofSuccess;
    }

    static WeightedMix of(List<Double> failureProbabilities, CusumWeight weight) {
        double[] chances =
                failureProbabilities.stream().mapToDouble(Double::doubleValue).toArray();
        double[] ofFailure = new double[chances.length];
        double[] ofSuccess = new double[chances.length];
        for (int i = 0; i < chances.length; i++) {
            ofFailure[i] = weight.of(chances[i], true);
            ofSuccess[i] = weight.of(chances[i], false);
        }
        return new WeightedMix(chances, ofFailure, ofSuccess);
    }

    /** What one case drawn from the mix adds when results are as predicted. */
    double draw(SplittableRandom random) {
        int drawn = random.nextInt(chances.length);
        return random.nextDouble() < chances[drawn] ? ofFailure[drawn] : ofSuccess[drawn];
    }
}
