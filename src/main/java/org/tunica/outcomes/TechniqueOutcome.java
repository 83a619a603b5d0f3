package org.tunica.outcomes;

import java.util.List;
import java.util.Optional;
import org.tunica.treatment.ClosureDefinition;

/**
 * What became of the segments treated with one technique and counted by one definition of closure.
 *
 * @param says the technique in words
 * @param closedMeans the definition in words, with its number
 * @param segments how many segments
 * @param people how many past cases
 * @param closed at each horizon
 * @param staying how long they stayed closed; absent when too few were scanned to tell
 * @param askedAboutComplications segments of which somebody asked at any visit
 * @param complications kinds that occurred, in the order of the list of kinds
 * @param deepEnd from good to grave, only what was seen
 */
public record TechniqueOutcome(
        String technique,
        String says,
        ClosureDefinition closure,
        String closedMeans,
        int segments,
        int people,
        List<ClosedAt> closed,
        Optional<StayingClosed> staying,
        Counted askedAboutComplications,
        List<Went> complications,
        List<AtDeepEnd> deepEnd) {
    public TechniqueOutcome {
        closed = List.copyOf(closed);
        complications = List.copyOf(complications);
        deepEnd = List.copyOf(deepEnd);
    }
}
