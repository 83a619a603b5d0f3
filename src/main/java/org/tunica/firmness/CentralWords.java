package org.tunica.firmness;

import java.util.Comparator;
import java.util.List;
import org.tunica.plan.FirmnessAdvice;

/** Central weights in words: what one who would choose an option holds. */
final class CentralWords {
    private CentralWords() {}

    /** "first if sparing the nerve matters more than lasting closure"; where weights are near even, so it says. */
    static String of(List<FirmnessAdvice.Weight> weights) {
        if (weights.isEmpty()) {
            return "first with no weights";
        }
        double even = 1.0 / weights.size();
        FirmnessAdvice.Weight most = weights.stream()
                .max(Comparator.comparing(FirmnessAdvice.Weight::weightShare))
                .orElseThrow();
        FirmnessAdvice.Weight least = weights.stream()
                .min(Comparator.comparing(FirmnessAdvice.Weight::weightShare))
                .orElseThrow();
        // less than a quarter away from even is what chance and a wide agreement look like
        if (most.weightShare() < even * 5 / 4 && least.weightShare() > even * 3 / 4) {
            return "first whatever matters more";
        }
        return "first if " + most.criterion().says() + " matters more than "
                + least.criterion().says();
    }
}
