package org.tunica.governance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.FaultyInput;

/** What was in force when. A test tells the story hour by hour. */
class TimelineTest {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    private final Map<String, List<Step>> steps = new LinkedHashMap<>();
    private long order;

    @Test
    void whatIsNotActivated_isNotInForce() {
        approved("1.0.0", 0);
        assertEquals(Optional.empty(), at(9));
        assertEquals(ReleaseState.APPROVED, story("1.0.0").stateAt(hour(9)));
    }

    @Test
    void theOneActivatedLast_isInForceAndTheEarlierStaysActive() {
        approved("1.0.0", 0);
        step("1.0.0", StepKind.ACTIVATED, 1, 1);
        approved("2.0.0", 2);
        step("2.0.0", StepKind.ACTIVATED, 3, 3);
        assertEquals(Optional.empty(), at(0));
        assertEquals(Optional.of("1.0.0"), at(1));
        assertEquals(Optional.of("1.0.0"), at(2));
        assertEquals(Optional.of("2.0.0"), at(3));
        assertEquals(ReleaseState.ACTIVE, story("1.0.0").stateAt(hour(4)));
        assertEquals(Optional.of("2.0.0"), timeline().supersededBy("1.0.0", hour(4)));
        assertEquals(Optional.empty(), timeline().supersededBy("2.0.0", hour(4)));
    }

    @Test
    void aRollback_bringsTheOneBeforeBackAndEndsTheOther() {
        approved("1.0.0", 0);
        step("1.0.0", StepKind.ACTIVATED, 1, 1);
        approved("2.0.0", 2);
        step("2.0.0", StepKind.ACTIVATED, 3, 3);
        step("2.0.0", StepKind.ROLLED_BACK, 5, 5);
        assertEquals(Optional.of("2.0.0"), at(4), "what was in force then stays true");
        assertEquals(Optional.of("1.0.0"), at(5));
        assertEquals(ReleaseState.RETIRED, story("2.0.0").stateAt(hour(6)));
        assertEquals(Optional.empty(), timeline().supersededBy("1.0.0", hour(6)));
        assertThrows(
                FaultyInput.class,
                () -> story("2.0.0")
                        .with(new Step(99, StepKind.ACTIVATED, hour(7), hour(7), "b", "", Optional.empty())));
    }

    @Test
    void aPlannedActivation_comesWithoutAnybodyDoingAnything() {
        approved("1.0.0", 0);
        step("1.0.0", StepKind.ACTIVATED, 1, 1);
        approved("2.0.0", 2);
        step("2.0.0", StepKind.ACTIVATED, 3, 10);
        assertEquals(Optional.of("1.0.0"), at(9));
        assertEquals(ReleaseState.APPROVED, story("2.0.0").stateAt(hour(9)));
        assertEquals(Optional.of(hour(10)), story("2.0.0").scheduledAt(hour(9)));
        assertEquals(Optional.of("2.0.0"), at(10));
        assertEquals(ReleaseState.ACTIVE, story("2.0.0").stateAt(hour(10)));
        assertEquals(Optional.empty(), story("2.0.0").scheduledAt(hour(10)));
    }

    @Test
    void aPlannedActivation_canBeTakenBackBeforeItComesAndNotAfter() {
        approved("1.0.0", 0);
        step("1.0.0", StepKind.ACTIVATED, 1, 10);
        Step late = new Step(99, StepKind.WITHDRAWN, hour(10), hour(10), "b", "", Optional.empty());
        assertThrows(FaultyInput.class, () -> story("1.0.0").with(late));
        step("1.0.0", StepKind.WITHDRAWN, 5, 5);
        assertEquals(Optional.empty(), at(11));
        assertEquals(ReleaseState.WITHDRAWN, story("1.0.0").stateAt(hour(11)));
    }

    @Test
    void aPlannedActivation_canBeMoved() {
        approved("1.0.0", 0);
        step("1.0.0", StepKind.ACTIVATED, 1, 10);
        step("1.0.0", StepKind.ACTIVATED, 2, 20);
        assertEquals(Optional.empty(), at(19));
        assertEquals(Optional.of("1.0.0"), at(20));
    }

    @Test
    void ofTwoPlannedForOneMoment_theOneRecordedLastIsInForce() {
        approved("1.0.0", 0);
        approved("1.1.0", 0);
        step("1.1.0", StepKind.ACTIVATED, 1, 10);
        step("1.0.0", StepKind.ACTIVATED, 2, 10);
        assertEquals(Optional.of("1.0.0"), at(10));
        assertEquals(Optional.of("1.1.0"), timeline().inForceWithout("1.0.0", hour(10)));
    }

    @Test
    void aReview_changesNoApproval() {
        approved("1.0.0", 0);
        step("1.0.0", StepKind.ACTIVATED, 1, 1);
        step("1.0.0", StepKind.REVIEWED, 80, 80);
        assertEquals("2026-03-01", story("1.0.0").approvedOn().orElseThrow().toString());
        assertEquals("2026-03-04", story("1.0.0").lastReviewed().orElseThrow().toString());
        assertEquals(ReleaseState.ACTIVE, story("1.0.0").stateAt(hour(81)));
    }

    @Test
    void aShadow_endsWhenToldOrWhenTheReleaseIsInUse() {
        approved("1.0.0", 0);
        step("1.0.0", StepKind.SHADOWED, 1, 1);
        approved("1.1.0", 1);
        step("1.1.0", StepKind.SHADOWED, 2, 2);
        assertEquals(Optional.of("1.1.0"), timeline().shadowAt(hour(2)));
        step("1.1.0", StepKind.ACTIVATED, 3, 3);
        assertEquals(Optional.of("1.0.0"), timeline().shadowAt(hour(3)));
        step("1.0.0", StepKind.SHADOW_ENDED, 4, 4);
        assertEquals(Optional.empty(), timeline().shadowAt(hour(4)));
        assertThrows(
                FaultyInput.class,
                () -> story("1.1.0")
                        .with(new Step(99, StepKind.SHADOWED, hour(5), hour(5), "b", "", Optional.empty())));
    }

    private void approved(String version, int hour) {
        step(version, StepKind.BUILT, hour, hour);
        step(version, StepKind.SUBMITTED, hour, hour);
        step(version, StepKind.APPROVED, hour, hour);
    }

    /** Recorded at one hour, in effect from another. */
    private void step(String version, StepKind kind, int hour, int fromHour) {
        Step step = new Step(++order, kind, hour(hour), hour(fromHour), "ben", "", Optional.empty());
        Story story = new Story(version, steps.getOrDefault(version, List.of())).with(step);
        steps.put(version, new ArrayList<>(story.steps()));
    }

    private Optional<String> at(int hour) {
        return timeline().inForceAt(hour(hour));
    }

    private Timeline timeline() {
        return new Timeline(steps.keySet().stream().map(this::story).toList());
    }

    private Story story(String version) {
        return new Story(version, steps.getOrDefault(version, List.of()));
    }

    private static Instant hour(int hour) {
        return START.plus(Duration.ofHours(hour));
    }
}
