package org.tunica.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.plan.OptionJudgement;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.SegmentJudgement;

/** What is told to differ between two advices, and how grave it is. */
class ComparerTest {
    private static final String DISTANCES = "knowledge/limits/distances.yaml";

    /** No wall thickness is recorded, so no heat setting is sought. */
    private static final CaseFile CASE = Edited.demo("missing-wall-thickness");

    private static final SegmentJudgement ADVISED =
            SegmentJudgement.of(Edited.SHIPPED.advise(CASE).segments().get(0));

    private static Comparison compared(Edited draft) {
        Tunica after = draft.tunica();
        return comparer(after).compare(Edited.SHIPPED.advise(CASE), after.advise(CASE));
    }

    private static Comparer comparer(Tunica after) {
        return Comparer.of(Edited.SHIPPED.knowledge(), Edited.SHIPPED.rules(), after.knowledge(), after.rules());
    }

    @Test
    void theSameRulesInOtherWordsChangeNothing() {
        Comparison same = compared(Edited.release()
                .with("rules/2-exclusions/heat-near-skin.rule", "so shallow a vein", "a vein as shallow as that"));
        assertTrue(same.same(), same::toString);
        assertEquals(1, same.segmentsCount());
    }

    @Test
    void aLimitThatBarsMoreIsToldWithBothItsNumbers() {
        ChangedSegment changed = compared(Edited.release().withValue(DISTANCES, "heat.skin-gap.min", "15"))
                .changed()
                .get(0);
        assertEquals(Gravity.EXCLUSION_NEW, changed.gravity());
        assertEquals(
                10,
                changed.options().stream()
                        .filter(option -> option.after().equals(Optional.of(OptionStanding.EXCLUDED)))
                        .count());
        Turn turn = turn(changed, "EXC-007");
        assertEquals(Turn.Act.SPEAKS_NOW, turn.act());
        assertEquals(10, turn.techniques().size());
        assertTrue(turn.sentence().endsWith("(heat.skin-gap.min: was 5 mm, is 15 mm)"), turn.sentence());
    }

    private static Turn turn(ChangedSegment changed, String rule) {
        return changed.turns().stream()
                .filter(one -> one.rule().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSameTheOtherWayRoundLosesBars() {
        Tunica strict =
                Edited.release().withValue(DISTANCES, "heat.skin-gap.min", "15").tunica();
        Comparer comparer =
                Comparer.of(strict.knowledge(), strict.rules(), Edited.SHIPPED.knowledge(), Edited.SHIPPED.rules());
        ChangedSegment changed = comparer.compare(strict.advise(CASE), Edited.SHIPPED.advise(CASE))
                .changed()
                .get(0);
        assertEquals(Gravity.EXCLUSION_LOST, changed.gravity());
        assertEquals(Turn.Act.IS_SILENT_NOW, turn(changed, "EXC-007").act());
    }

    @Test
    void aRuleThatSetsAnotherValueIsNamed() {
        ChangedSegment changed = compared(
                        Edited.release().withValue("knowledge/limits/devices.yaml", "adhesive.tip.start", "4.5"))
                .changed()
                .get(0);
        assertEquals(Gravity.SETTINGS, changed.gravity());
        assertEquals(List.of(ChangedSegment.Kind.SETTINGS), changed.kinds());
        assertTrue(changed.turns().stream().allMatch(turn -> turn.act() == Turn.Act.SETS_OTHER_NOW));
        assertFalse(changed.options().get(0).settings().isEmpty());
    }

    /** A single difference in how one option stands, and another that leads. */
    @ParameterizedTest
    @CsvSource({
        "EXCLUDED,      SUITABLE,      foam, steam, FIRST_WAS_EXCLUDED",
        "CAREFUL,       SUITABLE,      foam, steam, FIRST_WAS_HELD_BACK",
        "MEASURE_FIRST, SUITABLE,      foam, steam, FIRST_WAS_HELD_BACK",
        "NOT_IN_ROOM,   SUITABLE,      foam, steam, FIRST_WAS_HELD_BACK",
        "SUITABLE,      PREFERRED,     foam, steam, OTHER_LEADS",
        "EXCLUDED,      CAREFUL,       foam, foam,  EXCLUSION_LOST",
        "EXCLUDED,      MEASURE_FIRST, foam, foam,  EXCLUSION_LOST",
        "CAREFUL,       EXCLUDED,      foam, '',    NOTHING_LEADS",
        "CAREFUL,       SUITABLE,      foam, foam,  STANDS_BETTER",
        "SUITABLE,      EXCLUDED,      foam, foam,  EXCLUSION_NEW",
        "SUITABLE,      CAREFUL,       foam, foam,  STANDS_WORSE"
    })
    void gravityFollowsFromStandingsAndFirst(
            OptionStanding before, OptionStanding after, String firstBefore, String firstAfter, Gravity gravity) {
        ChangedSegment changed = comparer(Edited.SHIPPED)
                .compare(standing(before, firstBefore), standing(after, firstAfter))
                .orElseThrow();
        assertEquals(gravity, changed.gravity());
        assertEquals(1, changed.options().size());
    }

    /** What was advised, with steam standing otherwise and another leading. */
    private static SegmentJudgement standing(OptionStanding steam, String first) {
        List<OptionJudgement> options = new ArrayList<>();
        for (OptionJudgement option : ADVISED.options()) {
            options.add(
                    option.technique().equals("steam")
                            ? new OptionJudgement("steam", steam, option.settings(), option.voices())
                            : option);
        }
        return new SegmentJudgement(ADVISED.ref(), Optional.of(first).filter(id -> !id.isEmpty()), options);
    }

    @Test
    void theWorstIsToldWhereSeveralThingsHappen() {
        List<OptionJudgement> options = new ArrayList<>();
        for (OptionJudgement option : ADVISED.options()) {
            options.add(new OptionJudgement(
                    option.technique(), OptionStanding.EXCLUDED, option.settings(), option.voices()));
        }
        SegmentJudgement nothing = new SegmentJudgement(ADVISED.ref(), Optional.empty(), options);
        Comparer comparer = comparer(Edited.SHIPPED);
        assertEquals(
                Gravity.NOTHING_LEADS,
                comparer.compare(ADVISED, nothing).orElseThrow().gravity());
        assertEquals(
                Gravity.FIRST_WAS_EXCLUDED,
                comparer.compare(nothing, ADVISED).orElseThrow().gravity());
    }

    @Test
    void twoCasesAreNotCompared() {
        Comparer comparer = comparer(Edited.SHIPPED);
        assertThrows(
                IllegalArgumentException.class,
                () -> comparer.compare(Edited.SHIPPED.advise(CASE), Edited.SHIPPED.advise(Edited.demo("pregnancy"))));
    }
}
