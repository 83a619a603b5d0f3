package org.tunica.firmness;

import java.util.Comparator;
import java.util.List;
import org.tunica.plan.FirmnessAdvice;

/** Central weights in words: what one who would choose an option holds. */
final class CentralWords {
    /** What chance and a wide agreement look like. */
    private static final double NEAR = 0.25;

    private CentralWords() {}

    /**
     * "first if sparing the nerve matters more than lasting closure": the criterion furthest above its usual weight against
     * the one furthest below; where all are near the usual, so it says.
     *
     * @param usual mean weight of each criterion over all draws
     */
    static String of(List<FirmnessAdvice.Weight> weights, double[] usual) {
        if (weights.isEmpty()) {
            return "first with no weights";
        }
        Comparator<FirmnessAdvice.Weight> byRatio = Comparator.comparingDouble(weight -> ratio(weight, usual));
        FirmnessAdvice.Weight most = weights.stream().max(byRatio).orElseThrow();
        FirmnessAdvice.Weight least = weights.stream().min(byRatio).orElseThrow();
        if (ratio(most, usual) < 1 + NEAR && ratio(least, usual) > 1 - NEAR) {
            return "first whatever matters more";
        }
        return "first if " + most.criterion().says() + " matters more than "
                + least.criterion().says();
    }

    private static double ratio(FirmnessAdvice.Weight weight, double[] usual) {
        return weight.weightShare() / usual[weight.criterion().ordinal()];
    }
}
