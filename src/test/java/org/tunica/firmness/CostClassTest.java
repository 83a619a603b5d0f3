package org.tunica.firmness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Criterion;
import org.tunica.casefile.Room.CostClass;

/** What holds for cost classes whatever options and classes there are: no class is never better than any class. */
class CostClassTest {
    private static final int DRAWS = 400;
    private static final CaseFile CASE =
            Tunica.shipped().readCase("case", CaseTree.soundLeg().bytes());
    private static final CaseFile COST_FIRST = Tunica.shipped()
            .readCase(
                    "case",
                    CaseTree.soundLeg()
                            .set("importance", List.of("low-cost", "durability"))
                            .bytes());

    @Property(seed = "1", tries = 80)
    void leavingOutAClassNeverHelpsItsOption(
            @ForAll @IntRange(min = 2, max = 6) int options, @ForAll @LongRange(min = 0, max = 99_999) long seed) {
        List<Worths> given = made(options, seed);
        int option = (int) (seed % options);
        notBetter(given, with(given, option, Optional.empty()), option);
    }

    @Property(seed = "2", tries = 80)
    void aBetterClassNeverCostsFirstPlace(
            @ForAll @IntRange(min = 2, max = 6) int options, @ForAll @LongRange(min = 0, max = 99_999) long seed) {
        List<Worths> given = made(options, seed);
        int option = (int) (seed % options);
        notBetter(
                with(given, option, Optional.of(CostClass.LOW)),
                with(given, option, Optional.of(CostClass.MIDDLING)),
                option);
        notBetter(
                with(given, option, Optional.of(CostClass.MIDDLING)),
                with(given, option, Optional.of(CostClass.HIGH)),
                option);
    }

    /** The whole criterion goes and comes with one class, so both sides of that step are looked at. */
    @Property(seed = "3", tries = 80)
    void theOnlyClassThereIsHelpsAsMuchAsAnyOther(
            @ForAll @IntRange(min = 2, max = 6) int options, @ForAll @LongRange(min = 0, max = 99_999) long seed) {
        List<Worths> none = made(options, seed);
        for (int i = 0; i < options; i++) {
            none = with(none, i, Optional.empty());
        }
        int option = (int) (seed % options);
        assertFalse(CostWorth.weighed(none).contains(Criterion.LOW_COST));
        notBetter(with(none, option, Optional.of(CostClass.LOW)), none, option);
        notBetter(with(none, option, Optional.of(CostClass.HIGH)), none, option);
    }

    @Property(seed = "4", tries = 40)
    void noClassIsWorthWhatAHighOneIs(
            @ForAll @IntRange(min = 2, max = 6) int options, @ForAll @LongRange(min = 0, max = 99_999) long seed) {
        List<Worths> given = made(options, seed);
        int option = (int) (seed % options);
        Acceptability high = ranks(with(given, option, Optional.of(CostClass.HIGH)), CASE);
        Acceptability none = ranks(with(given, option, Optional.empty()), CASE);
        for (int i = 0; i < options; i++) {
            for (int rank = 0; rank < options; rank++) {
                assertEquals(high.share(i, rank), none.share(i, rank));
            }
        }
    }

    @Property(seed = "5", tries = 40)
    void noClassLiftsAnythingOverABetterStanding(
            @ForAll @IntRange(min = 2, max = 6) int options, @ForAll @LongRange(min = 0, max = 99_999) long seed) {
        List<Worths> given = with(made(options, seed), 0, Optional.of(CostClass.LOW));
        List<Worths> behind = new ArrayList<>(given);
        behind.set(0, standing(given.get(0), Weighing.NOT_RANKED));
        for (int i = 1; i < options; i++) {
            behind.set(i, standing(given.get(i), 0));
        }
        assertEquals(0, ranks(behind, COST_FIRST).firstShare(0));
    }

    /** What is weighed by alike for all takes nothing from anyone, although it takes its share of the weights. */
    @Property(seed = "6", tries = 40)
    void classesThatTellNothingApartChangeNothing(
            @ForAll @IntRange(min = 2, max = 6) int options, @ForAll @LongRange(min = 0, max = 99_999) long seed) {
        List<Worths> made = made(options, seed);
        Wishes wishes = new Wishes(DRAWS, 1);
        List<Criterion> all = List.of(Criterion.values());
        List<Criterion> without = all.subList(0, Criterion.LOW_COST.ordinal());
        for (int i = 0; i < options; i++) {
            made = with(made, i, Optional.empty());
        }
        Acceptability weighed = ranks(made, wishes.of(CASE, all));
        Acceptability unweighed = ranks(made, wishes.of(CASE, without));
        for (int i = 0; i < options; i++) {
            assertEquals(unweighed.firstShare(i), weighed.firstShare(i));
        }
        for (CostClass same : CostClass.values()) {
            List<Worths> alike = made;
            for (int i = 0; i < options; i++) {
                alike = with(alike, i, Optional.of(same));
            }
            assertEquals(without, CostWorth.weighed(alike));
        }
    }

    @Test
    void ofTwoAlikeTheCheaperAlwaysLeads() {
        Worths one = made(2, 1).get(0);
        List<Worths> pair = with(with(List.of(one, one), 0, Optional.of(CostClass.MIDDLING)), 1, Optional.empty());
        assertEquals(1, ranks(pair, CASE).firstShare(0));
        assertEquals(0, ranks(with(pair, 1, Optional.of(CostClass.LOW)), CASE).firstShare(0));
    }

    /**
     * By hand: cost low against middling u, all of something else for the dearer; the cheaper leads when w > 1 / (2 - u), so
     * in 1 - ln 2 of draws; against a high class in a half.
     */
    @Test
    void anOrdinalCriterionAgainstAMeasuredOne() {
        int draws = 10_000;
        CostWorth cost = new CostWorth(draws, 3);
        assertEquals(1 - Math.log(2), cheaperLeads(draws, cost, CostClass.MIDDLING), 0.01);
        assertEquals(0.5, cheaperLeads(draws, cost, CostClass.HIGH), 0.01);
    }

    private static double cheaperLeads(int draws, CostWorth cost, CostClass dearer) {
        WeightTable weights = WeightDraws.open(2).table(draws, 1);
        double leads = 0;
        for (int draw = 0; draw < draws; draw++) {
            double[] weight = weights.rows()[draw];
            double low = weight[0] * cost.at(draw, Optional.of(CostClass.LOW));
            double other = weight[0] * cost.at(draw, Optional.of(dearer)) + weight[1];
            leads += low > other ? 1 : 0;
        }
        return leads / draws;
    }

    private static void notBetter(List<Worths> before, List<Worths> after, int option) {
        for (CaseFile caseFile : List.of(CASE, COST_FIRST)) {
            Acceptability was = ranks(before, caseFile);
            Acceptability is = ranks(after, caseFile);
            assertTrue(
                    is.firstShare(option) <= was.firstShare(option),
                    was.firstShare(option) + " rose to " + is.firstShare(option));
            for (int k = 0; k < before.size(); k++) {
                assertTrue(k == option || is.winShare(option, k) <= was.winShare(option, k), "against " + k);
            }
        }
    }

    private static Acceptability ranks(List<Worths> options, CaseFile caseFile) {
        return ranks(options, new Wishes(DRAWS, 1).of(caseFile, CostWorth.weighed(options)));
    }

    private static Acceptability ranks(List<Worths> options, Wishes.Wished wished) {
        return AcceptabilityRun.of(
                new SegmentDraws(options, wished.weighed(), new CostWorth(DRAWS, 3)), wished.weights(), 1);
    }

    private static List<Worths> with(List<Worths> options, int option, Optional<CostClass> costClass) {
        List<Worths> other = new ArrayList<>(options);
        other.set(option, of(options.get(option), options.get(option).tiers(), costClass));
        return other;
    }

    private static Worths standing(Worths of, int tier) {
        return of(of, IntStream.of(of.tiers()).map(any -> tier).toArray(), of.costClass());
    }

    private static Worths of(Worths of, int[] tiers, Optional<CostClass> costClass) {
        return new Worths(
                of.technique(),
                tiers,
                of.rules(),
                of.killProbability(),
                of.nerve(),
                of.skin(),
                of.durability(),
                of.shortSessionShare(),
                of.fewNeedlesShare(),
                costClass,
                List.of(),
                List.of());
    }

    /** Options that differ in all but their standing, of which a third has no class. */
    private static List<Worths> made(int options, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return IntStream.range(0, options)
                .mapToObj(i -> new Worths(
                        "made-" + i,
                        random.ints(4, 0, 2).toArray(),
                        random.doubles(4).toArray(),
                        random.nextDouble(),
                        new Margin(random.nextDouble(), 1, 2, 0, 3),
                        new Margin(random.nextDouble(), 1, 2, 0, 3),
                        Quantiles.open(),
                        random.nextDouble(),
                        random.nextDouble(),
                        random.nextInt(3) == 0 ? Optional.empty() : Optional.of(CostClass.values()[random.nextInt(3)]),
                        List.of(),
                        List.of()))
                .toList();
    }
}
