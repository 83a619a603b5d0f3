package org.tunica.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Puts the options of a segment in order: standing, then points, then what is foreseen and published, and only then the
 * name, so that no two tie.
 */
final class Ranking {
    private Ranking() {}

    /** @param keys what settles ties, by technique */
    static List<OptionAdvice> rank(List<OptionAdvice> options, Map<String, TieKey> keys) {
        Comparator<OptionAdvice> order = Comparator.comparing(OptionAdvice::standing)
                .thenComparing(option -> option.score().orElse(0), Comparator.reverseOrder())
                .thenComparing(option -> keys.get(option.technique()), TieKey.ORDER)
                .thenComparing(OptionAdvice::technique);
        List<OptionAdvice> ordered = options.stream().sorted(order).toList();
        List<OptionAdvice> ranked = new ArrayList<>();
        for (int place = 0; place < ordered.size(); place++) {
            OptionAdvice option = ordered.get(place);
            if (!option.standing().ranked()) {
                ranked.add(option);
            } else if (place + 1 < ordered.size() && even(option, ordered.get(place + 1))) {
                ranked.add(option.withRank(place + 1).withTie(TieWords.of(option, ordered.get(place + 1), keys)));
            } else {
                ranked.add(option.withRank(place + 1));
            }
        }
        return ranked;
    }

    private static boolean even(OptionAdvice one, OptionAdvice other) {
        return one.standing() == other.standing() && one.score().equals(other.score());
    }
}
