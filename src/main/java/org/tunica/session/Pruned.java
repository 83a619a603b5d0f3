package org.tunica.session;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The candidates of a segment as choices for the solver, without those that another beats in everything. */
final class Pruned {
    private Pruned() {}

    static List<Choice> of(List<Candidate> candidates) {
        List<Choice> kept = new ArrayList<>();
        for (Candidate candidate : candidates) {
            Choice choice = choice(candidate);
            if (kept.stream().noneMatch(better -> better.atLeastAsGoodAs(choice))) {
                kept.add(choice);
            }
        }
        return kept;
    }

    private static Choice choice(Candidate candidate) {
        Map<Shared, Integer> takes = new EnumMap<>(Shared.class);
        candidate.demand().amounts().forEach((shared, amount) -> takes.put(shared, Steps.up(amount)));
        return new Choice(
                candidate.option().technique(),
                candidate.worth(),
                takes,
                candidate.demand().generator(),
                candidate.demand().position() == Position.PRONE);
    }
}
