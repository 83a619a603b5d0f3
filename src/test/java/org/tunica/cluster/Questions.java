package org.tunica.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.invented.InventedLibrary;
import org.tunica.pastcases.PastCase;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.Found;
import org.tunica.similar.Hit;
import org.tunica.similar.SimilarFilter;

/** Questions of made-up cases put to two libraries of the same cases, whose answers must be the same. */
final class Questions {
    private static final List<String> WORDS = List.of("foam", "clot", "wide trunk", "pain", "nerve", "Closed!", "???");
    private static final Duration LONGEST_WAIT = Duration.ofMinutes(1);
    private static final int MOST = 10;
    private static final int FILTERED = 4;

    private final InventedLibrary asking;
    private final Tunica tunica;

    Questions(Tunica tunica, long seed) {
        this.tunica = tunica;
        this.asking = tunica.pastCases().inventedLibrary(seed);
    }

    /** Every fourth question is narrowed by a technique. */
    void compare(int number, CaseLibrary one, CaseLibrary other) {
        Optional<String> technique = number % FILTERED == 1
                ? Optional.of(new ArrayList<>(tunica.knowledge().techniqueIds())
                        .get(number % tunica.knowledge().techniqueIds().size()))
                : Optional.empty();
        compare(
                number,
                new SimilarFilter(technique, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                one,
                other);
    }

    void compare(int number, SimilarFilter filter, CaseLibrary one, CaseLibrary other) {
        PastCase asked = asking.at(number);
        Limb limb = asked.caseFile().limbs().get(0);
        Segment segment = limb.segments().get(number % limb.segments().size());
        Found here = one.nearest(asked.caseFile(), limb, segment, filter, MOST);
        Found there = other.nearest(asked.caseFile(), limb, segment, filter, MOST);
        same(here, there, "question " + number);
    }

    /** All of an answer: which segments in which order, how alike and why, their cases, and how many were looked at. */
    private static void same(Found here, Found there, String question) {
        assertEquals(said(here), said(there), question);
        assertTrue(here.equals(there), question);
    }

    /**
     * The same while nodes come and go: a question that is not answered is asked again, for a minute at most.
     *
     * @return how often it was asked in vain
     */
    int comparePatiently(int number, CaseLibrary one, CaseLibrary other) {
        Instant end = Instant.now().plus(LONGEST_WAIT);
        for (int vain = 0; ; vain++) {
            try {
                compare(number, one, other);
                return vain;
            } catch (EngineUnavailable e) {
                if (Instant.now().isAfter(end)) {
                    throw e;
                }
                pause();
            }
        }
    }

    private static void pause() {
        try {
            Thread.sleep(200);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    void compareWords(CaseLibrary one, CaseLibrary other) {
        int found = 0;
        for (String words : WORDS) {
            Found here = one.byWords(words, SimilarFilter.ALL, MOST);
            same(here, other.byWords(words, SimilarFilter.ALL, MOST), words);
            found += here.hits().size();
        }
        assertFalse(found == 0, "no word was found at all");
    }

    private static String said(Found found) {
        StringBuilder said =
                new StringBuilder(found.considered() + " considered, " + found.tooLittleKnown() + " unknown");
        for (Hit hit : found.hits()) {
            said.append('\n')
                    .append(hit.past().pastCase().id())
                    .append(' ')
                    .append(hit.past().place())
                    .append(' ')
                    .append(hit.likeness()
                            .map(likeness -> String.valueOf(likeness.similarity()))
                            .orElse("by words"));
        }
        return said.toString();
    }
}
