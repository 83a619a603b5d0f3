package org.tunica.similar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.tunica.invented.InventedLibrary;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import org.tunica.outcomes.WhatHappened;

/** Made-up hits: the nearest hundred are counted (our own choice, knowledge/outcomes.yaml), however few are listed. */
class HappenedToHitsTest {
    private static final Knowledge KNOWLEDGE = Knowledge.of(Bundle.shipped());
    private static final HappenedToHits HAPPENED = new HappenedToHits(KNOWLEDGE);
    private static final List<Hit> HITS = new InventedLibrary(KNOWLEDGE, 5)
            .cases(150)
            .flatMap(one -> PastSegment.of(one, KNOWLEDGE).stream())
            .map(past -> new Hit(past, Optional.empty()))
            .toList();

    @Test
    void theNearestHundredAreCounted() {
        assertTrue(HITS.size() > 120, "only " + HITS.size());
        assertEquals(100, HAPPENED.enough(10));
        assertEquals(300, HAPPENED.enough(300));
        WhatHappened happened = HAPPENED.of(found(HITS), SimilarFilter.ALL).orElseThrow();
        assertEquals(OptionalInt.of(100), happened.segments());
        assertTrue(happened.invented());
        List<String> words = HAPPENED.words(Optional.of(happened));
        assertTrue(words.get(0).startsWith("INVENTED. What happened to the 100 nearest at one year"), words::toString);
        assertEquals(1 + happened.techniques().size() + happened.notTold().size(), words.size());
    }

    @Test
    void whoWasChosenByHowItWent_isNotCounted() {
        SimilarFilter open = new SimilarFilter(
                Optional.empty(),
                Optional.of(SimilarFilter.Outcome.OPEN),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Optional<WhatHappened> none = HAPPENED.of(found(HITS), open);
        assertEquals(Optional.empty(), none);
        assertTrue(HAPPENED.words(none).get(0).contains("not counted"));
    }

    @Test
    void nothingFound_tellsNothing() {
        WhatHappened nothing = HAPPENED.of(found(List.of()), SimilarFilter.ALL).orElseThrow();
        assertEquals(List.of(), nothing.techniques());
    }

    private static Found found(List<Hit> hits) {
        return new Found(hits, hits.size(), 0);
    }
}
