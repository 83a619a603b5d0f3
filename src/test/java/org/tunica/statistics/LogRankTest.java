package org.tunica.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class LogRankTest {
    /** Textbooks print 16.79, O 21 and E 10.75 (placebo); R 4.2.2, survival 3.5.3: survdiff(Surv(t, s) ~ g) has the rest. */
    @Test
    void documentationExample_remissions() {
        LogRank found = LogRank.of(Remissions.TREATED, Remissions.PLACEBO).orElseThrow();
        assertEquals(16.79294099, found.chiSquare(), 1e-8);
        assertEquals(9, found.first().observed());
        assertEquals(19.25050095, found.first().expected(), 1e-8);
        assertEquals(21, found.second().observed());
        assertEquals(10.74949905, found.second().expected(), 1e-8);
        assertEquals(4.168809109e-05, found.chanceProbability(), 1e-12);
    }

    /** R: survdiff(Surv(time, status) ~ x, aml). */
    @Test
    void maintenance() {
        LogRank found =
                LogRank.of(Remissions.MAINTAINED, Remissions.NOT_MAINTAINED).orElseThrow();
        assertEquals(3.396388699, found.chiSquare(), 1e-8);
        assertEquals(10.689335992, found.first().expected(), 1e-8);
        assertEquals(0.06533932204, found.chanceProbability(), 1e-9);
    }

    @Test
    void nothingToCompare_isNoAnswer() {
        assertEquals(Optional.empty(), LogRank.of(Remissions.read("5+ 9+"), Remissions.read("7+")));
        // the other group is gone before the first event
        assertEquals(Optional.empty(), LogRank.of(Remissions.read("5+ 9+"), Remissions.read("12 14")));
    }

    @Property(seed = "20260101")
    void groupsSwapped_sameAnswer(
            @ForAll("followed") List<FollowedCase> one, @ForAll("followed") List<FollowedCase> other) {
        Optional<LogRank> there = LogRank.of(one, other);
        Optional<LogRank> back = LogRank.of(other, one);
        assertEquals(there.isPresent(), back.isPresent());
        if (there.isPresent()) {
            LogRank found = there.get();
            assertEquals(found.chiSquare(), back.orElseThrow().chiSquare(), 1e-9 * Math.max(1, found.chiSquare()));
            assertEquals(
                    found.first().observed() + found.second().observed(),
                    found.first().expected() + found.second().expected(),
                    1e-9);
            assertTrue(found.chanceProbability() >= 0 && found.chanceProbability() <= 1, found::toString);
        }
    }

    @Property(seed = "20260102", tries = 200)
    void groupAgainstItself_doesNotDiffer(@ForAll("followed") List<FollowedCase> group) {
        LogRank.of(group, group).ifPresent(found -> assertEquals(0, found.chiSquare(), 1e-12));
    }

    @Provide
    Arbitrary<List<FollowedCase>> followed() {
        return Combinators.combine(Arbitraries.integers().between(0, 30), Arbitraries.of(true, false))
                .as(FollowedCase::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(25);
    }
}
