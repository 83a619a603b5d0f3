package org.tunica.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WilsonIntervalTest {
    /**
     * The examples of Newcombe, Stat Med 1998;17:857-872, table I, method 3 (its values from memory, all six computed again
     * from the formula).
     */
    @ParameterizedTest
    @CsvSource({
        "81, 263, 0.2553, 0.3662",
        "15, 148, 0.0624, 0.1605",
        "0, 20, 0.0000, 0.1611",
        "1, 29, 0.0061, 0.1718",
        "9, 10, 0.5958, 0.9821",
        "0, 10, 0.0000, 0.2775"
    })
    void publishedLimits(int events, int total, double lowShare, double highShare) {
        WilsonInterval found = WilsonInterval.of(events, total, 0.95);
        assertEquals(lowShare, found.lowShare(), 5e-5);
        assertEquals(highShare, found.highShare(), 5e-5);
    }

    /** Against R 4.2.2: prop.test(3, 47, conf.level = 0.9, correct = FALSE)$conf.int. */
    @ParameterizedTest
    @CsvSource({"3, 47, 0.9, 0.025795495580, 0.149346809466"})
    void otherConfidence(int events, int total, double confidenceShare, double lowShare, double highShare) {
        WilsonInterval found = WilsonInterval.of(events, total, confidenceShare);
        assertEquals(lowShare, found.lowShare(), 1e-9);
        assertEquals(highShare, found.highShare(), 1e-9);
    }

    @Property(seed = "20260101")
    void holdsTheShareAndStaysWithinNothingAndAll(
            @ForAll @IntRange(max = 500) int events, @ForAll @IntRange(max = 500) int others) {
        int total = events + others + (events + others == 0 ? 1 : 0);
        WilsonInterval found = WilsonInterval.of(events, total, 0.95);
        assertTrue(0 <= found.lowShare() && found.lowShare() <= found.share(), found::toString);
        assertTrue(found.share() <= found.highShare() && found.highShare() <= 1, found::toString);
        assertTrue(found.lowShare() < found.highShare(), found::toString);
    }

    @Property(seed = "20260102")
    void mirrored_whenTheOtherOutcomeIsCounted(
            @ForAll @IntRange(max = 200) int events, @ForAll @IntRange(min = 1, max = 200) int others) {
        WilsonInterval one = WilsonInterval.of(events, events + others, 0.95);
        WilsonInterval other = WilsonInterval.of(others, events + others, 0.95);
        assertEquals(one.lowShare(), 1 - other.highShare(), 1e-12);
        assertEquals(one.highShare(), 1 - other.lowShare(), 1e-12);
    }

    @Property(seed = "20260103")
    void tenTimesTheCases_makeItNarrower(
            @ForAll @IntRange(max = 100) int events, @ForAll @IntRange(min = 1, max = 100) int others) {
        assertTrue(width(WilsonInterval.of(10 * events, 10 * (events + others), 0.95))
                < width(WilsonInterval.of(events, events + others, 0.95)));
    }

    private static double width(WilsonInterval interval) {
        return interval.highShare() - interval.lowShare();
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 0.95", "3, 2, 0.95", "-1, 2, 0.95", "1, 2, 1", "1, 2, 0", "1, 2, NaN"})
    void impossibleCounts_areRefused(int events, int total, double confidenceShare) {
        assertThrows(IllegalArgumentException.class, () -> WilsonInterval.of(events, total, confidenceShare));
    }
}
