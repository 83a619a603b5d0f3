package org.tunica.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.Tunica;

/** Of options that are even on points, what is foreseen and published decides, in this order, and the name last. */
class TieTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final TieKey WARM = new TieKey(0.9, 0.1, 45, 0.8);

    @Test
    void eachNumberDecidesOnlyWhereThoseBeforeItAreEqual() {
        List<TieKey> bestFirst = List.of(
                new TieKey(0.95, 1, 60, 0),
                new TieKey(0.9, 0.05, 60, 0),
                new TieKey(0.9, 0.1, 44, 0),
                new TieKey(0.9, 0.1, 45, 0.9),
                WARM,
                TieKey.WORST);
        List<TieKey> shuffled = new ArrayList<>(bestFirst);
        for (int seed = 0; seed < 5; seed++) {
            Collections.shuffle(shuffled, new Random(seed));
            assertEquals(bestFirst, shuffled.stream().sorted(TieKey.ORDER).toList());
        }
    }

    @Test
    void pointsGoBeforeWhatSettlesTies_andTheNameComesLast() {
        Rated more = rated("b", 5.5, TieKey.WORST);
        Rated even = rated("c", 5, WARM);
        Rated alike = rated("a", 5, WARM);
        assertEquals(
                List.of(more, alike, even),
                List.of(even, alike, more).stream().sorted(Rated.ORDER).toList());
    }

    private static Rated rated(String technique, double points, TieKey tie) {
        return new Rated(technique, OptionStanding.SUITABLE, points, tie, Set.of());
    }

    /** Laser and segmental radiofrequency are even on points here; of the laser fewer draws kill the whole wall. */
    @Test
    void theStraightTrunkGoesToWhatKillsTheWholeWallMoreSurely() {
        List<OptionAdvice> options = options("straight-thigh-trunk");
        OptionAdvice first = options.get(0);
        OptionAdvice second = options.get(1);
        assertEquals(first.score(), second.score());
        TieAdvice tie = first.tie().orElseThrow();
        assertEquals(second.technique(), tie.against());
        assertEquals(TieAdvice.SettledBy.WHOLE_WALL_KILL, tie.settledBy());
        assertTrue(death(first) > death(second));
        assertTrue(tie.says().contains(Math.round(100 * death(first)) + " % against"), tie.says());
        assertEquals(Optional.empty(), second.tie());
    }

    /** The two foams reach alike and share their rates; nothing but the name is left. */
    @Test
    void whereNothingDecidesTheNameIsSaidToBeNoReason() {
        TieAdvice tie = options("accessory-trunk").stream()
                .filter(option -> option.technique().equals("foam-polidocanol"))
                .findFirst()
                .flatMap(OptionAdvice::tie)
                .orElseThrow();
        assertEquals("foam-sts", tie.against());
        assertEquals(TieAdvice.SettledBy.NAME, tie.settledBy());
        assertTrue(tie.says().endsWith("by name alone, which is no reason"), tie.says());
    }

    private static double death(OptionAdvice option) {
        return option.predicted().heat().orElseThrow().deathShare();
    }

    private static List<OptionAdvice> options(String demo) {
        return TUNICA.advise(TUNICA.readCase("case", CaseTree.demo(demo).bytes()))
                .segments()
                .get(0)
                .options();
    }
}
