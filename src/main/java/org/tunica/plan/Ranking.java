package org.tunica.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts the options of a segment in order: standing, then points, then name, so that no two tie. */
final class Ranking {
    private static final Comparator<OptionAdvice> ORDER = Comparator.comparing(OptionAdvice::standing)
            .thenComparing(option -> option.score().orElse(0), Comparator.reverseOrder())
            .thenComparing(OptionAdvice::technique);

    private Ranking() {}

    static List<OptionAdvice> rank(List<OptionAdvice> options) {
        List<OptionAdvice> ranked = new ArrayList<>();
        for (OptionAdvice option : options.stream().sorted(ORDER).toList()) {
            ranked.add(option.standing().ranked() ? option.withRank(ranked.size() + 1) : option);
        }
        return ranked;
    }
}
