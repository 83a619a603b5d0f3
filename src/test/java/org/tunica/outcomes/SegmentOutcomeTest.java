package org.tunica.outcomes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tunica.outcomes.Past.closed;
import static org.tunica.outcomes.Past.open;
import static org.tunica.outcomes.Past.visit;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.treatment.ClosureDefinition;
import org.tunica.treatment.Complication;

/** Invented courses of one segment; days of count and their windows are customary, no source. */
class SegmentOutcomeTest {
    private static final Horizon YEAR = Past.NUMBERS.year();

    @Test
    void aVeinSeenClosedAndThenOpen_countsAsOpenFromTheMiddle() {
        SegmentOutcome outcome = outcome(closed(6), closed(41), open(182), closed(360));
        assertEquals(Optional.of(ClosureDefinition.ADHESIVE_OPEN_STUMP), outcome.closure());
        assertEquals(Optional.of(Staying.seenOpen(41, 182)), outcome.staying());
        assertEquals(112, outcome.staying().orElseThrow().daysAfter()); // 41 + 141 / 2, rounded up
        assertEquals(
                List.of(new Look(6, true), new Look(41, true), new Look(182, false), new Look(360, true)),
                outcome.looks());
        assertEquals(Optional.of(true), outcome.closedAt(YEAR), "closed again by itself: what the scan saw counts");
    }

    @Test
    void openAtTheFirstScan_isTakenAsClosedOnTheDayItself() {
        assertEquals(4, outcome(open(7)).staying().orElseThrow().daysAfter()); // 7 / 2, rounded up
    }

    @Test
    void neverSeenOpen_isFollowedUntilTheLastScanThatTold() {
        Staying staying = outcome(closed(7), closed(370), visit(700, "\"clot\":\"none\""))
                .staying()
                .orElseThrow();
        assertFalse(staying.failed());
        assertEquals(370, staying.daysAfter());
    }

    @Test
    void treatedAgain_isAFailureFromThatDay_whateverAScanShowsThen() {
        SegmentOutcome outcome =
                outcome(closed(7), visit(200, "\"openLengthCm\":0,\"again\":\"foam\""), closed(365), closed(1100));
        assertTrue(outcome.staying().orElseThrow().failed());
        assertEquals(200, outcome.staying().orElseThrow().daysAfter());
        assertEquals(Optional.of(false), outcome.closedAt(YEAR));
        assertEquals(Optional.of(true), outcome.closedAt(Past.NUMBERS.horizons().get(0)));
    }

    @Test
    void treatedAgainUnseen_isAFailureToo() {
        SegmentOutcome outcome = outcome(closed(7), visit(350, "\"again\":\"heat\""));
        assertEquals(Optional.of(false), outcome.closedAt(YEAR));
        assertEquals(350, outcome.staying().orElseThrow().daysAfter());
    }

    @ParameterizedTest
    @CsvSource({"304, ", "305, true", "425, true", "426, "})
    void aScanCountsInsideTheWindowAlone(int day, Boolean expected) { // 305 to 425: our own choice
        assertEquals(Optional.ofNullable(expected), outcome(closed(day)).closedAt(YEAR));
    }

    @Test
    void ofTwoScansInAWindow_theNearestCounts_ofTwoAsNearTheLater() {
        assertEquals(Optional.of(true), outcome(open(320), closed(370)).closedAt(YEAR));
        assertEquals(Optional.of(false), outcome(closed(360), open(370)).closedAt(YEAR));
    }

    @Test
    void withoutAScan_nothingIsTold() {
        SegmentOutcome outcome = outcome(visit(7, ""), visit(365, "\"refluxSeconds\":0"));
        assertEquals(Optional.empty(), outcome.staying());
        assertEquals(Optional.empty(), outcome.closedAt(YEAR));
        assertEquals(Optional.empty(), outcome.complications());
        assertEquals(Optional.empty(), outcome.deepEnd());
    }

    @Test
    void complications_standOnceEachWithTheirGravestGrade() {
        SegmentOutcome outcome = outcome(
                visit(7, "\"complications\":[{\"kind\":\"bruise\",\"grade\":\"mild\"},{\"kind\":\"matting\"}]"),
                visit(42, "\"complications\":[{\"kind\":\"bruise\",\"grade\":\"severe\"}]"),
                visit(365, "\"complications\":[{\"kind\":\"bruise\",\"grade\":\"moderate\"}]"));
        assertEquals(
                List.of(
                        new Complication(
                                Complication.Kind.BRUISE, Optional.of(Complication.Grade.SEVERE), Optional.empty()),
                        new Complication(Complication.Kind.MATTING, Optional.empty(), Optional.empty())),
                outcome.complications().orElseThrow());
        assertEquals(
                Optional.of(List.of()),
                outcome(visit(7, "\"complications\":[]")).complications(),
                "asked, and there was none");
    }

    @Test
    void theDeepEnd_isToldAtItsWorst() { // classes S-0043
        assertEquals(
                Optional.of(DeepEnd.CLASS_II),
                outcome(
                                visit(3, "\"clot\":\"up-to-junction\""),
                                visit(7, "\"clot\":\"into-deep-vein\",\"deepLumenPercent\":30"),
                                visit(42, "\"clot\":\"none\""))
                        .deepEnd());
        assertEquals(
                Optional.of(DeepEnd.NO_CLOT),
                outcome(visit(7, "\"clot\":\"none\"")).deepEnd());
        assertEquals(
                Optional.of(DeepEnd.CLASS_NOT_TOLD),
                outcome(visit(7, "\"clot\":\"into-deep-vein\"")).deepEnd());
    }

    @Test
    void theDefinitionDecides() { // 10 cm may stay open: S-0023
        assertEquals(
                Optional.of(true),
                Past.outcome(Past.number(1)
                                .with("CLOSURE", "mechanochemical-open-part")
                                .seen(visit(365, "\"openLengthCm\":9")))
                        .closedAt(YEAR));
        assertEquals(
                Optional.of(false), outcome(visit(365, "\"openLengthCm\":9")).closedAt(YEAR));
    }

    @Test
    void aSegmentNotTreated_hasNoOutcome() {
        assertEquals(Optional.empty(), Past.OUTCOMES.of(Past.number(1).seen(closed(7)), "L2"));
    }

    private static SegmentOutcome outcome(String... visits) {
        return Past.outcome(Past.number(1).seen(visits));
    }
}
