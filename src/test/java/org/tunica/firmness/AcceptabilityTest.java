package org.tunica.firmness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** What holds for any values: shares add up, a dominated option never leads, a better value never costs first place. */
class AcceptabilityTest {
    private static final int DRAWS = 500;
    private static final double ROUNDING = 1e-12;

    @Property(seed = "1", tries = 60)
    void everyRankAndEveryOptionIsGivenOutOnce(
            @ForAll @IntRange(min = 1, max = 8) int options,
            @ForAll @IntRange(min = 1, max = 7) int criteria,
            @ForAll @LongRange(min = 0, max = 99_999) long seed) {
        Acceptability found = run(new Made(options, criteria, seed), criteria, seed);
        for (int i = 0; i < options; i++) {
            double row = 0;
            double column = 0;
            for (int k = 0; k < options; k++) {
                row += found.share(i, k);
                column += found.share(k, i);
                if (i != k) {
                    assertEquals(1, found.winShare(i, k) + found.winShare(k, i), ROUNDING);
                }
            }
            assertEquals(1, row, ROUNDING);
            assertEquals(1, column, ROUNDING);
        }
    }

    @Property(seed = "2", tries = 60)
    void aBetterValueNeverCostsFirstPlace(
            @ForAll @IntRange(min = 2, max = 8) int options,
            @ForAll @IntRange(min = 1, max = 7) int criteria,
            @ForAll @LongRange(min = 0, max = 99_999) long seed) {
        Made made = new Made(options, criteria, seed);
        int option = (int) (seed % options);
        int criterion = (int) (seed % criteria);
        double before = run(made, criteria, seed).firstShare(option);
        double after =
                run(new Improved(made, option, criterion), criteria, seed).firstShare(option);
        assertTrue(after >= before, before + " fell to " + after);
    }

    @Property(seed = "3", tries = 60)
    void aBetterTierCannotBeOutweighed(
            @ForAll @IntRange(min = 2, max = 8) int options, @ForAll @LongRange(min = 0, max = 99_999) long seed) {
        CriteriaDraws made = new Made(options, 3, seed);
        int best = (int) (seed % options);
        Acceptability found = run(new Raised(made, best), 3, seed);
        assertEquals(1, found.firstShare(best));
    }

    /** 1.96 * sqrt(0.25 / 10000) is 0.0098: so many draws tell any share to a hundredth, 19 times in 20. */
    @Test
    void tenThousandDrawsTellAShareToAHundredth() {
        int within = 0;
        int runs = 100;
        for (int seed = 0; seed < runs; seed++) {
            double share = AcceptabilityRun.of(
                            new FixedValues(2, 2, 1, 0, 0, 1),
                            WeightDraws.open(2).table(10_000, 1000 + seed + 1),
                            1000 + seed)
                    .firstShare(0);
            within += Math.abs(share - 0.5) <= 0.01 ? 1 : 0;
        }
        assertTrue(within >= 90, within + " of " + runs + " runs within a hundredth");
    }

    @Test
    void evenOptionsTakeTurnsAndNoNameIsFavoured() {
        Acceptability found = AcceptabilityRun.of(
                new FixedValues(4, 1, 1, 1, 1, 1), WeightDraws.open(1).table(10_000, 1 + 1), 1);
        for (int i = 0; i < 4; i++) {
            assertEquals(0.25, found.firstShare(i), ROUNDING);
        }
    }

    @Test
    void theSameSeedGivesTheSame() {
        Acceptability one = run(new Made(6, 7, 5), 7, 11);
        Acceptability two = run(new Made(6, 7, 5), 7, 11);
        for (int i = 0; i < 6; i++) {
            assertEquals(one.firstShare(i), two.firstShare(i));
            assertEquals(
                    one.centralWeights(i).map(Arrays::toString),
                    two.centralWeights(i).map(Arrays::toString));
            assertEquals(one.confidence(i), two.confidence(i));
        }
    }

    @Test
    void weightsThatCannotBeAreRefused() {
        WeightDraws open = WeightDraws.open(2);
        double[] most = {0.4, 0.4};
        assertThrows(IllegalArgumentException.class, () -> open.within(new double[2], most));
        assertThrows(IllegalArgumentException.class, () -> open.inOrder(0, 1, 2));
        assertThrows(IllegalArgumentException.class, () -> WeightDraws.open(0));
    }

    /** The mean of the largest of n even weights is (1 + 1/2 + ... + 1/n) / n; so for the second and so on, by hand. */
    @Test
    void anOrderHandsOutTheSortedWeights() {
        WeightDraws ordered = WeightDraws.open(3).inOrder(1, 0, 1);
        SplittableRandom random = new SplittableRandom(3);
        double[] weights = new double[3];
        double[] sums = new double[3];
        for (int draw = 0; draw < 20_000; draw++) {
            ordered.fill(random, weights, new double[3]);
            assertEquals(1, Arrays.stream(weights).sum(), 1e-9);
            assertTrue(weights[1] >= weights[0] && weights[1] >= weights[2]);
            for (int j = 0; j < 3; j++) {
                sums[j] += weights[j] / 20_000;
            }
        }
        assertEquals(11.0 / 18, sums[1], 0.005);
        assertEquals(7.0 / 36, sums[0], 0.005);
        assertEquals(7.0 / 36, sums[2], 0.005);
    }

    private static Acceptability run(CriteriaDraws values, int criteria, long seed) {
        return AcceptabilityRun.of(values, WeightDraws.open(criteria).table(DRAWS, seed + 1), seed);
    }

    /** Values made up by a seed, anew in every draw. */
    private record Made(int options, int criteria, long seed) implements CriteriaDraws {
        @Override
        public void fill(int draw, SplittableRandom random, double[] values, int[] tiers) {
            for (int at = 0; at < values.length; at++) {
                values[at] = random.nextDouble();
            }
            for (int i = 0; i < options; i++) {
                tiers[i] = random.nextInt(2);
            }
        }
    }

    private record Improved(CriteriaDraws made, int option, int criterion) implements CriteriaDraws {
        @Override
        public int options() {
            return made.options();
        }

        @Override
        public int criteria() {
            return made.criteria();
        }

        @Override
        public void fill(int draw, SplittableRandom random, double[] values, int[] tiers) {
            made.fill(draw, random, values, tiers);
            values[option * criteria() + criterion] += 0.2;
        }
    }

    private record Raised(CriteriaDraws made, int best) implements CriteriaDraws {
        @Override
        public int options() {
            return made.options();
        }

        @Override
        public int criteria() {
            return made.criteria();
        }

        @Override
        public void fill(int draw, SplittableRandom random, double[] values, int[] tiers) {
            made.fill(draw, random, values, tiers);
            Arrays.fill(tiers, 1);
            tiers[best] = 0;
        }
    }
}
