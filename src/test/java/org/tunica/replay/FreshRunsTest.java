package org.tunica.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.invented.InventedLibrary;
import org.tunica.physics.HeatMemory;
import org.tunica.plan.Advice;
import org.tunica.plan.Planner;
import org.tunica.plan.ScoreWeights;

/**
 * A replay says case by case what two fresh advices say that are compared, whatever was changed between the two: numbers of
 * rules, of the ranking, of the models, and whole sentences.
 */
class FreshRunsTest {
    private static final int WITHOUT_HEAT = 40;
    private static final int WITH_HEAT = 2;
    private static final int LIMITS = 8;

    /** Searches for heat settings are shared by all releases with the same constants; that is tested in {@link HeatFileTest}. */
    private static final HeatMemory HEAT = HeatMemory.recent();

    private static final ReleaseSide BEFORE = side(Edited.SHIPPED, HEAT);
    private static final List<CaseFile> CASES = cases();

    private static ReleaseSide side(Tunica tunica, HeatMemory memory) {
        return ReleaseSide.of(tunica.release(), tunica.knowledge(), tunica.rules(), memory);
    }

    /** Most of them ask nothing of the heat model, so that many can be looked at; in one nearly every technique is ranked. */
    private static List<CaseFile> cases() {
        InventedLibrary library = Edited.SHIPPED.pastCases().inventedLibrary(12);
        List<CaseFile> without = new ArrayList<>();
        List<CaseFile> with = new ArrayList<>();
        for (int i = 0; without.size() < WITHOUT_HEAT || with.size() < WITH_HEAT; i++) {
            CaseFile one = library.at(i).caseFile();
            long questions = one.limbs().stream()
                    .flatMap(limb -> limb.segments().stream())
                    .mapToLong(segment ->
                            BEFORE.physics().heatQuestions(one, segment).size())
                    .sum();
            if (questions == 0) {
                without.add(one);
            } else if (questions <= 10) {
                with.add(one);
            }
        }
        List<CaseFile> cases = new ArrayList<>(without.subList(0, WITHOUT_HEAT));
        cases.addAll(with.subList(0, WITH_HEAT));
        cases.add(Edited.demo("straight-thigh-trunk"));
        return cases;
    }

    /** The number of segments that come out otherwise, having found that both ways agree on each. */
    private static int agreed(Tunica draft) {
        boolean sameHeat =
                draft.physics().heatDigest().equals(Edited.SHIPPED.physics().heatDigest());
        ReleaseSide after = side(draft, sameHeat ? HEAT : HeatMemory.recent());
        TwoReleases replay = new TwoReleases(BEFORE, after);
        Comparer comparer = Comparer.of(BEFORE.knowledge(), BEFORE.rules(), after.knowledge(), after.rules());
        int changed = 0;
        for (CaseFile one : CASES) {
            List<ChangedSegment> replayed =
                    replay.changed(one).stream().map(ReplayedSegment::change).toList();
            assertEquals(comparer.compare(fresh(BEFORE, one), fresh(after, one)).changed(), replayed, one.caseRef());
            changed += replayed.size();
        }
        return changed;
    }

    /** By the rule engine, with every word. */
    private static Advice fresh(ReleaseSide side, CaseFile caseFile) {
        return new Planner(side.knowledge(), side.physics(), side.rules()).advise(caseFile, side.name());
    }

    @Test
    void limitsAtRandom() {
        List<String> ids = new ArrayList<>(new TreeSet<>(Edited.SHIPPED.rules().limitsUsed()));
        Random random = new Random(20261127);
        int tried = 0;
        int moving = 0;
        while (tried < LIMITS) {
            String id = ids.get(random.nextInt(ids.size()));
            double factor = 0.6 + random.nextDouble();
            Optional<Tunica> draft = accepted(Edited.release().scaled(id, factor));
            if (draft.isPresent()) {
                tried++;
                moving += agreed(draft.get()) > 0 ? 1 : 0;
            }
        }
        assertTrue(moving >= LIMITS / 4, "only " + moving + " of the drafts moved anything");
    }

    /** A number that ends up outside its own range is refused while loading, as it should be. */
    private static Optional<Tunica> accepted(Edited edited) {
        try {
            return Optional.of(edited.tunica());
        } catch (FaultyInput e) {
            return Optional.empty();
        }
    }

    @Test
    void weightsOfTheRanking() {
        for (String id : List.of("score.strong", "score.caution.moderate", "score.first-choice")) {
            assertTrue(ScoreWeights.IDS.contains(id));
            agreed(Edited.release().scaled(id, 3).tunica());
        }
    }

    @Test
    void numbersOfTheModelsButForHeat() {
        assertTrue(
                agreed(Edited.release().scaled("posture.standing-to-lying", 1.1).tunica()) > 0);
    }

    @Test
    void sentences() {
        String skin = "rules/2-exclusions/heat-near-skin.rule";
        int moved = agreed(Edited.release()
                .with(
                        "rules/3-cautions/weak-evidence.rule",
                        "when the technique is steam\n  then caution moderately",
                        "when the technique is steam\n  then caution slightly")
                .tunica());
        moved += agreed(Edited.release()
                .with(skin, "when the technique works by heat\n", "when the technique is microwave or steam\n")
                .tunica());
        assertTrue(moved > 0);
        assertEquals(
                0,
                agreed(Edited.release()
                        .with(skin, "heat needs a gap to the skin", "heat needs some gap to the skin")
                        .tunica()));
    }
}
