package org.tunica.firmness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.PlausibleRange;
import org.tunica.plan.FirmnessAdvice.Change;

/** A change found with heat settings kept, held against a whole engine made up for the test: "b" leads where it says so. */
class ConfirmingTest {
    private static final PlausibleRange RANGE = new PlausibleRange(0.1, 2, "mm");
    private final List<Double> asked = new ArrayList<>();

    @Test
    void whereTheWholeEngineAgreesItIsConfirmedWithTwoQuestions() {
        Change change = confirmed(wall -> wall >= 0.5);
        assertEquals(Change.Sought.CONFIRMED, change.sought());
        assertEquals(0.5, change.at());
        assertEquals(0.495, change.holdsAt());
        assertEquals(Optional.of("b"), change.leads());
        assertEquals(List.of(0.495, 0.5), asked);
    }

    @Test
    void wherePlaceIsLostEarlierTheWholeEngineFindsIt() {
        Change change = confirmed(wall -> wall >= 0.44);
        assertEquals(Change.Sought.SOUGHT_ANEW, change.sought());
        between(change, 0.44);
        assertEquals(change.at() - 0.4, change.by(), 1e-9);
        assertEquals(20 * (change.at() - 0.4), change.deviations().orElseThrow(), 1e-9);
    }

    @Test
    void wherePlaceIsLostLaterTheWholeEngineGoesOut() {
        Change change = confirmed(wall -> wall >= 0.63);
        assertEquals(Change.Sought.SOUGHT_ANEW, change.sought());
        between(change, 0.63);
        assertTrue(asked.size() <= Confirming.MOST_ASKED, asked::toString);
    }

    @Test
    void whereItIsNotLostAtAllThatIsSaid() {
        Change change = confirmed(wall -> false);
        assertEquals(Change.Sought.NOT_FOUND, change.sought());
        assertEquals(0.5, change.at());
        assertEquals(0.65, change.holdsAt(), 1e-9);
        assertTrue(asked.size() <= Confirming.MOST_ASKED, asked::toString);
    }

    /** Outwards it stops at what may be entered. */
    @Test
    void nothingIsAskedThatMayNotBeEntered() {
        Change change = new Confirming(new PlausibleRange(0.1, 0.52, "mm"), Optional.of("a"), this::never).of(found());
        assertEquals(0.52, change.holdsAt());
        assertEquals(List.of(0.495, 0.5, 0.52), asked);
    }

    /** Nearer ways first; both ways are looked at, and nothing further out than asked. */
    @Test
    void theSearchFindsTheNearerOfTwoTurns() {
        Optional<Bracket> found = search(value -> value < 0.9 || value > 1.3).nearest(1, 0.2, RANGE);
        assertTrue(found.orElseThrow().lost() < 0.9 && found.orElseThrow().held() >= 0.9, found.toString());
        assertEquals(Optional.empty(), search(value -> value > 1.5).nearest(1, 0.2, RANGE));
    }

    private static TurnSearch search(DoublePredicate lost) {
        return new TurnSearch(Optional.of("a"), value -> Optional.of(lost.test(value) ? "b" : "a"), List.of(2.0), 6);
    }

    private Optional<String> never(double value) {
        asked.add(value);
        return Optional.of("a");
    }

    private void between(Change change, double turn) {
        assertTrue(change.holdsAt() < turn && turn <= change.at(), change.toString());
        assertTrue(change.at() - change.holdsAt() < 0.015, change.toString());
    }

    private Change confirmed(DoublePredicate lost) {
        return new Confirming(RANGE, Optional.of("a"), value -> {
                    asked.add(value);
                    return Optional.of(lost.test(value) ? "b" : "a");
                })
                .of(found());
    }

    private static Change found() {
        return new Change(
                "limbs.segments.wallThicknessMm",
                "the wall thickness",
                0.4,
                0.5,
                0.495,
                0.1,
                "mm",
                OptionalDouble.of(2),
                Optional.of("c"),
                Change.Sought.SETTINGS_KEPT);
    }
}
