package org.tunica.rules;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What became of the ranking of a segment, for rules that are asked once it stands.
 *
 * @param firmness word of the glossary: firm, not-firm, or none where nothing is ranked
 * @param familyFirmness the same of the family of the option ranked first
 * @param bestStanding word of the glossary: how the best option stands
 * @param rankedCount number of options that are ranked
 * @param closeCallsCount number of near misses that would change how the option ranked first stands
 * @param leadingFamily word of the glossary: by what the option ranked first works, or none
 */
public record RankingFacts(
        Optional<String> firmness,
        Optional<String> familyFirmness,
        Optional<String> bestStanding,
        OptionalDouble rankedCount,
        OptionalDouble closeCallsCount,
        Optional<String> leadingFamily) {
    /** Nothing is ranked yet: what every rule before the ranking is told. */
    static final RankingFacts NOT_YET = new RankingFacts(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty());
}
