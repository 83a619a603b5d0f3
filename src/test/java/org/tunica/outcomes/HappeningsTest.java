package org.tunica.outcomes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tunica.outcomes.Past.closed;
import static org.tunica.outcomes.Past.open;
import static org.tunica.outcomes.Past.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tunica.pastcases.PastCase;
import org.tunica.statistics.SurvivalAt;
import org.tunica.treatment.ClosureDefinition;
import org.tunica.treatment.Complication;

/** A base made by hand: everything expected here was counted on paper. */
class HappeningsTest {
    private static final Happenings HAPPENINGS = new Happenings(Past.KNOWLEDGE);

    @Test
    void failuresAreCounted_alsoThoseTreatedAgain() {
        List<PastCase> cases = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            cases.add(Past.number(i).seen(closed(7), closed(365)));
        }
        cases.add(Past.number(8).seen(closed(7), open(360)));
        cases.add(Past.number(9).seen(closed(7), visit(200, "\"again\":\"foam\""), closed(365)));
        TechniqueOutcome laser = happened(cases).techniques().get(0);
        assertEquals(Counted.told(10, 10, 0.95), laser.closed().get(0).closed());
        assertEquals(Counted.told(8, 10, 0.95), laser.closed().get(3).closed());
        // Wilson limits of 8 of 10, by hand: centre (8 + 1.92) / (10 + 3.84), half 1.96 sqrt(8 * 2 / 10 + 0.96) / 13.84
        assertEquals(0.4902, laser.closed().get(3).closed().lowShare().getAsDouble(), 1e-4);
        assertEquals(0.9433, laser.closed().get(3).closed().highShare().getAsDouble(), 1e-4);
        // open from day 184 (middle of 7 and 360) of 10, then again of 9 at day 200
        assertEquals(
                List.of(184, 200),
                laser.staying().orElseThrow().curve().steps().stream()
                        .filter(step -> step.events() > 0)
                        .map(step -> step.daysAfter())
                        .toList());
        SurvivalAt year = laser.staying().orElseThrow().at().get(3);
        assertEquals(0.8, year.free().freeShare(), 1e-12);
        assertEquals(8, year.atRisk());
    }

    @Test
    void definitionsAreNeverPutTogether() {
        List<PastCase> cases = new ArrayList<>(same(0, 6, closed(365)));
        for (int i = 6; i < 13; i++) {
            cases.add(
                    Past.number(i).with("CLOSURE", "mechanochemical-open-part").seen(visit(365, "\"openLengthCm\":9")));
        }
        WhatHappened happened = happened(cases);
        assertEquals(
                List.of(ClosureDefinition.MECHANOCHEMICAL_OPEN_PART, ClosureDefinition.ADHESIVE_OPEN_STUMP),
                happened.techniques().stream().map(TechniqueOutcome::closure).toList());
        assertEquals(
                List.of(7, 6),
                happened.techniques().stream()
                        .map(one -> one.closed().get(3).closed().events().getAsInt())
                        .toList());
        assertTrue(happened.techniques().get(0).closedMeans().contains("10 cm [S-0023, published]"));
    }

    @Test
    void aSmallGroupIsHidden_andTheNextSmallestWithIt() {
        List<PastCase> cases = new ArrayList<>(same(0, 20, closed(365)));
        IntStream.range(20, 26)
                .forEach(i ->
                        cases.add(Past.number(i).technique("rf-segmental-7cm").seen(closed(365))));
        IntStream.range(26, 29)
                .forEach(i -> cases.add(Past.number(i).technique("adhesive").seen(closed(365))));
        WhatHappened happened = happened(cases);
        assertEquals(
                List.of("laser-1470-radial"),
                happened.techniques().stream().map(TechniqueOutcome::technique).toList());
        assertEquals(
                List.of("rf-segmental-7cm", "adhesive"),
                happened.notTold().stream().map(NotTold::technique).toList());
        assertEquals(
                List.of(OptionalInt.empty(), OptionalInt.of(5)),
                happened.notTold().stream().map(NotTold::fewerThan).toList());
        assertEquals(OptionalInt.of(29), happened.segments());
    }

    @Test
    void ofTwoGroupsOneSmall_theSumIsHiddenInstead() {
        List<PastCase> cases = new ArrayList<>(same(0, 20, closed(365)));
        IntStream.range(20, 23)
                .forEach(i -> cases.add(Past.number(i).technique("adhesive").seen(closed(365))));
        WhatHappened happened = happened(cases);
        assertEquals(1, happened.techniques().size());
        assertEquals(OptionalInt.empty(), happened.segments());
        assertEquals(Counted.withheld(), happened.neverFollowed());
    }

    @Test
    void aHorizonOrACurveFewReach_isNotTold() {
        List<PastCase> cases = new ArrayList<>(same(0, 10, closed(7), closed(365)));
        cases.addAll(same(10, 4, closed(7), closed(1095)));
        TechniqueOutcome laser = happened(cases).techniques().get(0);
        assertEquals(Counted.fewerThan(5), laser.closed().get(4).closed());
        assertEquals("none seen", Said.counted(laser.closed().get(2).closed()));
        StayingClosed staying = laser.staying().orElseThrow();
        assertEquals(OptionalInt.of(365), staying.endsAfterDays());
        assertEquals(365, staying.curve().lastDaysAfter());
        assertEquals(
                List.of(7, 42, 180, 365),
                staying.at().stream().map(SurvivalAt::daysAfter).toList());
    }

    @Test
    void complicationsOfWhoWasAsked_fewAreHidden() {
        List<PastCase> cases = new ArrayList<>(same(0, 20, closed(7)));
        cases.addAll(same(20, 20, visit(7, "\"complications\":[]")));
        cases.addAll(same(40, 6, visit(7, "\"complications\":[{\"kind\":\"bruise\",\"grade\":\"severe\"}]")));
        cases.addAll(same(46, 3, visit(7, "\"complications\":[{\"kind\":\"deep-vein-thrombosis\"}]")));
        TechniqueOutcome laser = happened(cases).techniques().get(0);
        assertEquals(Counted.told(29, 49, 0.95), laser.askedAboutComplications());
        assertEquals(
                List.of(
                        new Went(Complication.Kind.BRUISE, Counted.told(6, 29, 0.95), Counted.told(6, 29, 0.95)),
                        new Went(
                                Complication.Kind.DEEP_VEIN_THROMBOSIS,
                                Counted.fewerThan(5, 29),
                                Counted.told(0, 29, 0.95))),
                laser.complications());
        assertEquals(
                "fewer than 5 of 29", Said.counted(laser.complications().get(1).had()));
    }

    @Test
    void theDeepEndIsCountedOfThoseLookedAt() {
        List<PastCase> cases = new ArrayList<>(same(0, 9, closed(7)));
        cases.addAll(same(9, 6, visit(7, "\"clot\":\"none\"")));
        cases.addAll(same(15, 5, visit(7, "\"clot\":\"up-to-junction\"")));
        assertEquals(
                List.of(
                        new AtDeepEnd(DeepEnd.NO_CLOT, Counted.told(6, 11, 0.95)),
                        new AtDeepEnd(DeepEnd.CLASS_I, Counted.told(5, 11, 0.95))),
                happened(cases).techniques().get(0).deepEnd());
    }

    @Test
    void noFollowUpAndNothingAtAll_areSaid() {
        TechniqueOutcome laser = happened(same(0, 7, visit(7, ""))).techniques().get(0);
        assertFalse(laser.staying().isPresent());
        assertTrue(laser.closed().stream().allMatch(one -> one.closed().total().getAsInt() == 0));
        WhatHappened nothing = happened(List.of());
        assertEquals(List.of(), nothing.techniques());
        assertEquals(OptionalInt.of(0), nothing.segments());
    }

    @Test
    void allCensored_staysAtOne() {
        StayingClosed staying =
                happened(same(0, 9, closed(42))).techniques().get(0).staying().orElseThrow();
        assertEquals(0, staying.curve().events());
        assertEquals(1, staying.at().get(1).free().freeShare());
        assertEquals(2, staying.at().size());
    }

    @Test
    void oneCase_isHiddenWholly() {
        WhatHappened one = happened(same(0, 1, closed(365)));
        assertEquals(List.of(), one.techniques());
        assertEquals(OptionalInt.of(5), one.notTold().get(0).fewerThan());
        assertEquals(OptionalInt.empty(), one.segments());
    }

    private static List<PastCase> same(int from, int count, String... visits) {
        return IntStream.range(from, from + count)
                .mapToObj(number -> Past.number(number).seen(visits))
                .toList();
    }

    private static WhatHappened happened(List<PastCase> cases) {
        return HAPPENINGS.of(Past.outcomes(cases));
    }
}
