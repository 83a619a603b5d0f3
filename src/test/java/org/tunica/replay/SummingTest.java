package org.tunica.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.plan.OptionStanding;

/** Batches are added up, by hand here: counts, groups, and what comes first. */
class SummingTest {
    private static final MovedLimit GAP =
            new MovedLimit("heat.skin-gap.min", OptionalDouble.of(5), OptionalDouble.of(6), "mm");

    private static ReplayedSegment segment(String caseRef, String ref, Gravity gravity, String... rules) {
        List<Turn> turns = new ArrayList<>();
        for (String rule : rules) {
            turns.add(new Turn(rule, "title", Turn.Act.SPEAKS_NOW, List.of("steam"), List.of(GAP)));
        }
        boolean standing = gravity != Gravity.REASONS && gravity != Gravity.SETTINGS;
        List<ChangedSetting> settings = gravity == Gravity.SETTINGS
                ? List.of(new ChangedSetting("foam", Optional.of("4 mL"), Optional.empty()))
                : List.of();
        List<ChangedOption> options = standing || !settings.isEmpty()
                ? List.of(new ChangedOption(
                        "steam",
                        Optional.of(OptionStanding.SUITABLE),
                        Optional.of(standing ? OptionStanding.EXCLUDED : OptionStanding.SUITABLE),
                        settings))
                : List.of();
        return new ReplayedSegment(
                caseRef,
                Limb.Side.LEFT,
                Segment.Vein.GREAT_SAPHENOUS,
                Segment.Level.THIGH,
                new ChangedSegment(ref, gravity, Optional.of("foam"), Optional.of("foam"), options, turns));
    }

    private static BatchResult batch(int number, ReplayedSegment... changed) {
        return new BatchResult(number, "sha256:" + number, 10, 20, 1, List.of(changed), List.of());
    }

    private static ReplayResult sum(BatchResult... batches) {
        Summing summing = new Summing();
        for (BatchResult batch : batches) {
            summing.add(batch);
        }
        return summing.result(Edited.SHIPPED.release(), Edited.SHIPPED.release(), List.of("some"), false);
    }

    private static final ReplayResult SUM = sum(
            batch(
                    0,
                    segment("a", "L1", Gravity.EXCLUSION_NEW, "EXC-007", "FIN-012"),
                    segment("a", "L2", Gravity.REASONS, "FIN-012"),
                    segment("b", "L1", Gravity.SETTINGS, "SET-001")),
            batch(1, segment("c", "R1", Gravity.EXCLUSION_LOST, "FIN-012"), segment("d", "R1", Gravity.SETTINGS)));

    @Test
    void countsSegmentsAndCases() {
        assertEquals(5, SUM.changedSegmentsCount());
        assertEquals(4, SUM.changedCasesCount());
        assertEquals(35, SUM.unchangedSegmentsCount());
        assertEquals(20, SUM.cases().casesCount());
        assertEquals(2, SUM.cases().checkedCount());
        assertEquals(
                List.of(
                        new KindCount(ChangedSegment.Kind.STANDING, 2, 2),
                        new KindCount(ChangedSegment.Kind.SETTINGS, 2, 2),
                        new KindCount(ChangedSegment.Kind.REASONS, 1, 1)),
                SUM.kinds());
        assertEquals(
                List.of(Gravity.EXCLUSION_LOST, Gravity.EXCLUSION_NEW, Gravity.SETTINGS, Gravity.REASONS),
                SUM.gravities().stream().map(GravityCount::gravity).toList());
        assertFalse(SUM.same());
    }

    /** The worst first; of equal gravity what concerns more segments. Where no rule turned, numbers moved. */
    @Test
    void groupsByRuleAndHowItTurned() {
        assertEquals(
                List.of("FIN-012 3", "EXC-007 1", "none 1", "SET-001 1"),
                SUM.causes().stream()
                        .map(cause -> cause.rule().orElse("none") + " " + cause.segmentsCount())
                        .toList());
        Cause worst = SUM.causes().get(0);
        assertEquals(2, worst.casesCount());
        assertEquals(Gravity.EXCLUSION_LOST, worst.gravity());
        assertEquals(List.of("c, R1"), worst.examples());
        assertEquals("FIN-012 speaks now", worst.heading());
        assertEquals(
                "heat.skin-gap.min: was 5 mm, is 6 mm", worst.limits().get(0).sentence());
        assertTrue(SUM.causes().get(2).says().startsWith("numbers moved"));
    }

    @Test
    void listsTheWorstAndNoMoreThanFit() {
        Random random = new Random(4);
        BatchResult[] batches = new BatchResult[40];
        for (int i = 0; i < batches.length; i++) {
            ReplayedSegment[] changed = new ReplayedSegment[10];
            for (int j = 0; j < changed.length; j++) {
                Gravity gravity = Gravity.values()[random.nextInt(Gravity.values().length)];
                changed[j] = segment("case " + (10 * i + j), "L1", gravity, "EXC-007");
            }
            batches[i] = batch(i, changed);
        }
        List<Gravity> listed =
                sum(batches).worst().stream().map(one -> one.change().gravity()).toList();
        assertEquals(ReplayResult.MOST_LISTED, listed.size());
        assertEquals(listed.stream().sorted().toList(), listed);
        List<Gravity> all = new ArrayList<>();
        for (BatchResult batch : batches) {
            batch.changed().forEach(one -> all.add(one.change().gravity()));
        }
        assertEquals(all.stream().sorted().limit(ReplayResult.MOST_LISTED).toList(), listed);
    }

    @Test
    void otherCasesHaveAnotherDigest() {
        assertNotEquals(sum(batch(0)).cases().digest(), sum(batch(1)).cases().digest());
        assertTrue(sum(batch(0)).same());
    }

    @Test
    void thePageSaysItAllInWords() {
        String page = new ReplayPage(Map.of("steam", "steam catheter")).of(SUM).toString();
        for (String words : List.of(
                "5 segments of 4 cases come out otherwise; 35 segments the same.",
                "an option is excluded no longer",
                "FIN-012 speaks now",
                "heat.skin-gap.min: was 5 mm, is 6 mm",
                "c, R1, left great saphenous, thigh",
                "Was suitable, is excluded",
                "steam catheter",
                "foam: no longer 4 mL",
                "Not compared: ")) {
            assertTrue(page.contains(words), words + " in " + page);
        }
        assertTrue(new ReplayPage(Map.of())
                .of(sum(batch(0)))
                .toString()
                .contains("Every segment of every case comes out the same."));
    }
}
