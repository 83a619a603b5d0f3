package org.tunica.outcomes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tunica.invented.InventedLibrary;
import org.tunica.statistics.SurvivalAt;

/** The invented library, whose failures were drawn from published rates: counting must find these again. */
class InventedLibraryOutcomesTest {
    private static final InventedLibrary LIBRARY = new InventedLibrary(Past.KNOWLEDGE, InventedLibrary.USUAL_SEED);

    @Test
    void closureOfSomeThousands_isThatDrawnFrom() {
        hold(5_000);
    }

    @Test
    @Tag("deep")
    void closureOfTwentyThousand_isThatDrawnFrom() {
        hold(20_000);
    }

    /** Closed at one year by the curve and by the scans, against the share drawn from for this very mix of veins. */
    private static void hold(int cases) {
        List<SegmentOutcome> outcomes = LIBRARY.cases(cases)
                .flatMap(one -> Past.OUTCOMES.of(one).stream())
                .toList();
        Map<String, Double> drawn = new HashMap<>();
        outcomes.forEach(one -> drawn.merge(
                kind(one.technique(), one.closure().orElseThrow().word()),
                LIBRARY.closedShareAfterAYear(one.technique(), one.vein()),
                Double::sum));
        WhatHappened happened = new Happenings(Past.KNOWLEDGE).of(outcomes);
        int looked = 0;
        for (TechniqueOutcome one : happened.techniques()) {
            if (one.segments() > 300) {
                String kind = kind(one.technique(), one.closure().word());
                closureAtOneYear(one, drawn.get(kind) / one.segments(), kind);
                looked++;
            }
        }
        assertTrue(looked >= 5, "only " + looked + " groups");
        assertTrue(happened.invented());
    }

    private static void closureAtOneYear(TechniqueOutcome outcome, double share, String kind) {
        SurvivalAt curve = outcome.staying().orElseThrow().at().get(3);
        Counted scans = outcome.closed().get(3).closed();
        assertEquals(365, curve.daysAfter());
        double error = curve.free().standardErrorShare().orElseThrow();
        assertEquals(share, curve.free().freeShare(), 3 * error, kind);
        assertTrue(
                scans.lowShare().getAsDouble() - error < share
                        && share < scans.highShare().getAsDouble() + error,
                kind + ": " + share + " against " + scans);
    }

    private static String kind(String technique, String closure) {
        return technique + " " + closure;
    }
}
