package org.tunica.rules;

import java.util.Optional;

/** How each field about the ranking is answered. */
final class RankingFields {
    /** How the ids of these fields start; only rules after the ranking may ask for them. */
    static final String PREFIX = "ranking.";

    private final AnswerTable<RankingFacts> table = new AnswerTable<>();

    RankingFields() {
        table.word("ranking.firmness", ranking -> word(ranking.firmness()));
        table.word("ranking.familyFirmness", ranking -> word(ranking.familyFirmness()));
        table.word("ranking.bestStanding", ranking -> word(ranking.bestStanding()));
        table.number("ranking.rankedCount", RankingFacts::rankedCount);
        table.number("ranking.closeCallsCount", RankingFacts::closeCallsCount);
        table.word("ranking.leadingFamily", ranking -> word(ranking.leadingFamily()));
    }

    AnswerTable<RankingFacts> table() {
        return table;
    }

    private static Answer word(Optional<String> known) {
        return known.<Answer>map(Answer.OneWord::new).orElse(Answer.UNKNOWN);
    }
}
