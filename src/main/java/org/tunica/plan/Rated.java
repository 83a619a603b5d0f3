package org.tunica.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How an option stands, without the words.
 *
 * @param technique id
 * @param points of the ranking; they mean nothing where the option is not ranked
 * @param tie what settles its place among those that are even with it
 * @param missing nouns of what must be measured before it can be ranked
 */
public record Rated(String technique, OptionStanding standing, double points, TieKey tie, Set<String> missing) {
    /** The order of the ranking: standing, then points, then what settles ties, then name. */
    public static final Comparator<Rated> ORDER = Comparator.comparing(Rated::standing)
            .thenComparing(Rated::points, Comparator.reverseOrder())
            .thenComparing(Rated::tie, TieKey.ORDER)
            .thenComparing(Rated::technique);

    Rated with(TieKey newTie) {
        return new Rated(technique, standing, points, newTie, missing);
    }

    /** The technique that would lead; none when nothing can be ranked. */
    public static Optional<String> first(List<Rated> rated) {
        return rated.stream()
                .filter(option -> option.standing().ranked())
                .min(ORDER)
                .map(Rated::technique);
    }
}
