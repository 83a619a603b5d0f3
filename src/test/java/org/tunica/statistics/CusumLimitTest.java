package org.tunica.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CusumLimitTest {
    private static final long SEED = 20260101;

    @Test
    void documentationExample_oneFalseAlarmInAThousandCases() {
        InControl mix = new InControl(List.of(0.02, 0.05, 0.05, 0.12), 2000, SEED);
        CusumLimit found = CusumLimit.of(new CusumWish.MeanCases(1000), 2, mix);
        assertTrue(found.reached().value() >= 1000, found::toString);
        // four standard errors above what was asked for would be a limit set too high
        assertEquals(1000, found.reached().value(), 4 * found.reached().standardError());
        assertEquals(found, CusumLimit.of(new CusumWish.MeanCases(1000), 2, mix));
    }

    /** The chain gives the exact mean for one constant risk; the simulation must agree within its own error. */
    @ParameterizedTest
    @CsvSource({"2, 8, 20", "2, 8, 35", "2, 16, 40", "1.5, 6, 30", "0.5, 8, 20", "0.5, 12, 30"})
    void simulatedRunLength_isThatOfTheChain(double oddsRatio, int stepsPerLogOdds, int limitSteps) {
        ChainRunLength chain = new ChainRunLength(oddsRatio, stepsPerLogOdds);
        double exact = chain.meanCases(limitSteps);
        CusumWish.Reached simulated = reached(new CusumWish.MeanCases((int) exact), chain, limitSteps);
        assertEquals(exact, simulated.value(), 3.5 * simulated.standardError());
        assertTrue(simulated.standardError() < 0.03 * exact, simulated::toString);
    }

    @ParameterizedTest
    @CsvSource({"2, 8, 20, 100", "2, 8, 30, 400", "0.5, 8, 25, 200"})
    void simulatedFalseAlarms_areThoseOfTheChain(double oddsRatio, int stepsPerLogOdds, int limitSteps, int cases) {
        ChainRunLength chain = new ChainRunLength(oddsRatio, stepsPerLogOdds);
        CusumWish.Reached simulated = reached(new CusumWish.FalseAlarms(0.05, cases), chain, limitSteps);
        assertEquals(chain.signalledShare(limitSteps, cases), simulated.value(), 3.5 * simulated.standardError());
    }

    /** What many runs do at a limit half a step below a place of the chain, where rounding cannot matter. */
    private static CusumWish.Reached reached(CusumWish wish, ChainRunLength chain, int limitSteps) {
        double limit = (limitSteps - 0.5) * chain.step();
        SplittableRandom seeds = new SplittableRandom(SEED);
        WeightedMix mix = WeightedMix.of(List.of(chain.failureProbability()), new CusumWeight(chain.oddsRatio()));
        return wish.reached(IntStream.range(0, 4000)
                .map(run -> new InControlRun(mix, wish.horizonCases(), seeds.split()).signalledAt(limit))
                .toArray());
    }

    /** The limit found lies on the step of the chain that is the first to be as quiet as wished. */
    @Test
    void limitFound_isTheLeastThatIsQuietEnough() {
        ChainRunLength chain = new ChainRunLength(2, 8);
        int wished = 500;
        int least = IntStream.iterate(1, steps -> steps + 1)
                .filter(steps -> chain.meanCases(steps) >= wished)
                .findFirst()
                .orElseThrow();
        CusumLimit found = CusumLimit.of(
                new CusumWish.MeanCases(wished), 2, new InControl(List.of(chain.failureProbability()), 8000, SEED));
        assertEquals((least - 1) * chain.step(), found.limit(), 1.5e-3);
    }

    @Test
    void limitForFalseAlarms_keepsThem() {
        InControl mix = new InControl(List.of(0.03, 0.08), 2000, SEED);
        CusumLimit found = CusumLimit.of(new CusumWish.FalseAlarms(0.05, 300), 2, mix);
        assertTrue(found.reached().value() <= 0.05, found::toString);
        assertTrue(found.reached().value() > 0.035, found::toString);
    }

    @Test
    void seldomerAlarms_needAHigherLimit() {
        InControl mix = new InControl(List.of(0.05), 500, SEED);
        double before = 0;
        for (int wished : new int[] {50, 100, 200, 400, 800}) {
            double limit =
                    CusumLimit.of(new CusumWish.MeanCases(wished), 2, mix).limit();
            assertTrue(limit >= before, limit + " after " + before);
            before = limit;
        }
    }

    /** A limit that holds with the simulated runs holds in the chart as well: both count a limit that is reached. */
    @Test
    void runAndChart_signalAtTheSameCase() {
        SplittableRandom random = new SplittableRandom(SEED);
        InControlRun run = new InControlRun(WeightedMix.of(List.of(0.2), new CusumWeight(2)), 10_000, random.split());
        int signalled = run.signalledAt(2);
        SplittableRandom again = new SplittableRandom(SEED).split();
        List<RiskedOutcome> outcomes = IntStream.range(0, signalled)
                .mapToObj(i -> {
                    again.nextInt(1);
                    return new RiskedOutcome(0.2, again.nextDouble() < 0.2);
                })
                .toList();
        List<CusumSignal> signals =
                OutcomeCusum.of(outcomes, new CusumDesign(2, 0.5, 2, 1e6)).signals();
        assertEquals(1, signals.size());
        assertEquals(signalled, signals.get(0).caseNumber());
    }

    @Test
    void impossibleWishes_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> new CusumWish.MeanCases(1));
        assertThrows(IllegalArgumentException.class, () -> new CusumWish.FalseAlarms(0, 10));
        assertThrows(IllegalArgumentException.class, () -> new CusumWish.FalseAlarms(0.05, 0));
        assertThrows(IllegalArgumentException.class, () -> new InControl(List.of(), 500, 1));
        assertThrows(IllegalArgumentException.class, () -> new InControl(List.of(0.1, 1.0), 500, 1));
        assertThrows(IllegalArgumentException.class, () -> new InControl(List.of(0.1), 99, 1));
    }
}
