package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;

/** The report on the invented library, held against a plain count. */
class AnonymityReportTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final int CASES = 400;
    private static final List<PastCase> LIBRARY =
            TUNICA.pastCases().inventedLibrary(1).cases(CASES).toList();
    private static final AnonymityReport REPORT = TUNICA.pastCases().anonymityReport(LIBRARY::forEach);

    @Test
    void everyCaseIsCounted_andEveryOneIsInvented() {
        assertEquals(List.of(CASES, CASES), List.of(REPORT.cases(), REPORT.invented()));
        assertEquals(
                CASES,
                REPORT.sizes().stream().mapToInt(AnonymityReport.Sizes::cases).sum());
    }

    @Test
    void groups_areThoseOfAPlainCount() {
        Map<List<String>, Integer> groups = new HashMap<>();
        LIBRARY.forEach(one -> groups.merge(Profile.of(one).known(REPORT.rare()), 1, Integer::sum));
        int smallest =
                groups.values().stream().mapToInt(Integer::intValue).min().orElseThrow();
        int below = groups.values().stream()
                .mapToInt(Integer::intValue)
                .filter(size -> size < REPORT.kAsked())
                .sum();
        assertEquals(List.of(smallest, below), List.of(REPORT.k(), REPORT.below()));
    }

    @Test
    void mildestRecoding_holdsNothingBack_andNoneAsMildDoes() {
        for (AnonymityReport.Mildest mildest : REPORT.mildest()) {
            AnonymityReport.Coarser found = mildest.recoding().orElseThrow();
            assertTrue(found.k() >= mildest.k());
            assertTrue(REPORT.recodings().stream()
                    .filter(one -> one.lossShare() < found.lossShare())
                    .allMatch(one -> one.k() < mildest.k()));
        }
    }

    @Test
    void emptyBase_hasNoGroups() {
        AnonymityReport empty = TUNICA.pastCases().anonymityReport(EachCase.NONE);
        assertEquals(List.of(0, 0, 0), List.of(empty.cases(), empty.k(), empty.below()));
    }
}
