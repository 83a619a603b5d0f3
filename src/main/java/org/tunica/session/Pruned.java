package org.tunica.session;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The candidates of a segment as choices for the solver, without those that another beats in everything. */
final class Pruned {
    private Pruned() {}

    static List<Choice> of(List<Candidate> candidates, Map<Shared, SharedLimit> limits) {
        List<Choice> kept = new ArrayList<>();
        for (Candidate candidate : candidates) {
            Choice choice = choice(candidate, limits);
            if (kept.stream().noneMatch(better -> better.atLeastAsGoodAs(choice))) {
                kept.add(choice);
            }
        }
        return kept;
    }

    private static Choice choice(Candidate candidate, Map<Shared, SharedLimit> limits) {
        Map<Shared, Integer> takes = new EnumMap<>(Shared.class);
        candidate.demand().amounts().forEach((shared, amount) -> {
            SharedLimit limit = limits.get(shared);
            boolean alone = limit != null && limit.aSegmentAloneMayPass() && amount > limit.limit();
            takes.put(shared, alone ? Steps.down(limit.limit()) : Steps.up(amount));
        });
        return new Choice(
                candidate.option().technique(),
                candidate.worth(),
                takes,
                candidate.demand().generator(),
                candidate.demand().position() == Position.PRONE);
    }
}
