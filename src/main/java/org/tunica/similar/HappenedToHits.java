package org.tunica.similar;

import java.util.List;
import java.util.Optional;
import org.tunica.knowledge.Knowledge;
import org.tunica.outcomes.Happenings;
import org.tunica.outcomes.SegmentOutcome;
import org.tunica.outcomes.SegmentOutcomes;
import org.tunica.outcomes.WhatHappened;

/** What happened to the segments a search found: to a fixed number of the nearest, however few of them are listed. */
final class HappenedToHits {
    private final SegmentOutcomes outcomes;
    private final Happenings happenings;

    HappenedToHits(Knowledge knowledge) {
        this.outcomes = new SegmentOutcomes(knowledge);
        this.happenings = new Happenings(knowledge);
    }

    /** How many must be found to list some and count the nearest. */
    int enough(int listed) {
        return Math.max(listed, happenings.nearest());
    }

    /** Absent where they were chosen by how it went: their shares would say no more than the choice. */
    Optional<WhatHappened> of(Found found, SimilarFilter filter) {
        if (filter.outcome().isPresent()) {
            return Optional.empty();
        }
        List<SegmentOutcome> counted = found.hits().stream()
                .limit(happenings.nearest())
                .flatMap(hit ->
                        outcomes.of(hit.past().pastCase(), hit.past().segment().ref()).stream())
                .toList();
        return Optional.of(happenings.ofNearest(counted));
    }

    List<String> words(Optional<WhatHappened> counted) {
        return counted.map(happenings::words)
                .orElse(List.of("What happened to the nearest is not counted, for they were chosen by how it went."));
    }
}
