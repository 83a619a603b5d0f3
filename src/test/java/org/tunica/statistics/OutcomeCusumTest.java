package org.tunica.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutcomeCusumTest {
    private static final double NEVER = 1e6;

    /**
     * Worked by hand from the weights of Steiner et al., Biostatistics 2000;1(4):441-452: with p = 0.1 and RA = 2 a success takes
     * log 1.1 = 0.0953 away and a failure adds log(2 / 1.1) = 0.5978.
     */
    @Test
    void documentationExample_tenCases() {
        OutcomeCusum chart = OutcomeCusum.of(cases(0.1, "0010110001"), new CusumDesign(2, 0.5, NEVER, NEVER));
        double[] worse = {0, 0, 0.5978, 0.5025, 1.1004, 1.6982, 1.6029, 1.5076, 1.4123, 2.0101};
        for (int i = 0; i < worse.length; i++) {
            assertEquals(worse[i], chart.points().get(i).worse(), 5e-5);
        }
        assertEquals(List.of(), chart.signals());
        assertEquals(4, chart.failures());
        assertEquals(1, chart.predictedFailures(), 1e-12);
    }

    /**
     * Weights for a low and a high predicted chance of the cardiac surgery example of the cited paper, as later authors print
     * them to three decimals; the last row from a textbook whose printed -0.0954 differs by one in a hundred.
     */
    @ParameterizedTest
    @CsvSource({
        "-3.68, 2, -0.024, 0.669",
        "0.17, 2, -0.433, 0.260",
        "-3.68, 0.5, 0.012, -0.681",
        "0.17, 0.5, 0.316, -0.377",
        "-2.207, 2, -0.0945, 0.5986"
    })
    void weights(double logit, double oddsRatio, double ofSuccess, double ofFailure) {
        CusumWeight weight = new CusumWeight(oddsRatio);
        double chance = 1 / (1 + Math.exp(-logit));
        assertEquals(ofSuccess, weight.of(chance, false), 6e-4);
        assertEquals(ofFailure, weight.of(chance, true), 6e-4);
    }

    /** By hand: two failures reach 1.1956, the third case starts again from 0. */
    @Test
    void signal_startsTheChartAgain() {
        OutcomeCusum chart = OutcomeCusum.of(cases(0.1, "00110111"), new CusumDesign(2, 0.5, 1.1, NEVER));
        assertEquals(
                List.of(new CusumSignal(CusumSide.WORSE, 4, 3), new CusumSignal(CusumSide.WORSE, 7, 6)),
                chart.signals());
        assertTrue(chart.points().get(3).worse() >= 1.1, "the point that signals shows its height");
        assertEquals(0, chart.points().get(4).worse());
        assertEquals(Math.log(2 / 1.1), chart.points().get(7).worse(), 1e-12);
    }

    /** By hand: with p = 0.5 and RA = 1/2 a success adds log(1 / 0.75) = 0.2877, so four reach 1. */
    @Test
    void successes_signalBetterAndPointDownwards() {
        OutcomeCusum chart = OutcomeCusum.of(cases(0.5, "100000"), new CusumDesign(2, 0.5, NEVER, 1));
        assertEquals(List.of(new CusumSignal(CusumSide.BETTER, 5, 2)), chart.signals());
        assertEquals(-4 * Math.log(1 / 0.75), chart.points().get(4).better(), 1e-12);
        assertEquals(-Math.log(1 / 0.75), chart.points().get(5).better(), 1e-12);
    }

    @Test
    void reachingTheLimitExactly_signals() {
        double failure = new CusumWeight(2).of(0.1, true);
        assertEquals(
                1,
                OutcomeCusum.of(cases(0.1, "1"), new CusumDesign(2, 0.5, failure, NEVER))
                        .signals()
                        .size());
    }

    /** Only a chart with the true odds has weights whose exponents average 1: the test of any likelihood ratio. */
    @Property(seed = "20260101")
    void weight_isALogLikelihoodRatio(@ForAll("chances") double chance, @ForAll("ratios") double oddsRatio) {
        CusumWeight weight = new CusumWeight(oddsRatio);
        double mean = chance * Math.exp(weight.of(chance, true)) + (1 - chance) * Math.exp(weight.of(chance, false));
        assertEquals(1, mean, 1e-12);
        assertEquals(Math.log(oddsRatio), weight.of(chance, true) - weight.of(chance, false), 1e-9);
    }

    @Property(seed = "20260102", tries = 300)
    void oneMoreFailure_neverLowersTheChartOfWorseResults(
            @ForAll("outcomes") List<RiskedOutcome> outcomes, @ForAll("places") int place) {
        int at = place % outcomes.size();
        CusumDesign silent = new CusumDesign(2, 0.5, NEVER, NEVER);
        List<RiskedOutcome> failed = IntStream.range(0, outcomes.size())
                .mapToObj(i -> new RiskedOutcome(
                        outcomes.get(i).failureProbability(),
                        i == at || outcomes.get(i).failed()))
                .toList();
        List<CusumPoint> before = OutcomeCusum.of(outcomes, silent).points();
        List<CusumPoint> after = OutcomeCusum.of(failed, silent).points();
        for (int i = 0; i < outcomes.size(); i++) {
            assertTrue(after.get(i).worse() >= before.get(i).worse());
            assertTrue(after.get(i).better() >= before.get(i).better());
            assertTrue(before.get(i).worse() >= 0 && before.get(i).better() <= 0);
        }
    }

    @Property(seed = "20260103", tries = 300)
    void signals_standWhereALimitIsReachedAndNowhereElse(@ForAll("outcomes") List<RiskedOutcome> outcomes) {
        for (CusumPoint point :
                OutcomeCusum.of(outcomes, new CusumDesign(2, 0.5, 1.3, 0.9)).points()) {
            int reached = (point.worse() >= 1.3 ? 1 : 0) + (point.better() <= -0.9 ? 1 : 0);
            assertEquals(reached, point.signals().size());
            point.signals().forEach(signal -> assertTrue(signal.sinceCaseNumber() <= signal.caseNumber()));
        }
    }

    @Provide
    Arbitrary<Double> chances() {
        return Arbitraries.doubles().ofScale(3).between(0.001, 0.999);
    }

    @Provide
    Arbitrary<Double> ratios() {
        return Arbitraries.doubles().between(0.1, 10).filter(ratio -> ratio != 1);
    }

    @Provide
    Arbitrary<Integer> places() {
        return Arbitraries.integers().between(0, 1000);
    }

    @Provide
    Arbitrary<List<RiskedOutcome>> outcomes() {
        return Combinators.combine(chances(), Arbitraries.of(true, false))
                .as(RiskedOutcome::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(60);
    }

    @Test
    void impossibleDesigns_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> new CusumDesign(1, 0.5, 4, 4));
        assertThrows(IllegalArgumentException.class, () -> new CusumDesign(2, 1, 4, 4));
        assertThrows(IllegalArgumentException.class, () -> new CusumDesign(2, 0.5, 0, 4));
        assertThrows(IllegalArgumentException.class, () -> new CusumDesign(2, 0.5, 4, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new CusumWeight(1));
        assertThrows(IllegalArgumentException.class, () -> new RiskedOutcome(0, false));
        assertThrows(IllegalArgumentException.class, () -> new RiskedOutcome(1, true));
    }

    private static List<RiskedOutcome> cases(double failureProbability, String failures) {
        return failures.chars()
                .mapToObj(one -> new RiskedOutcome(failureProbability, one == '1'))
                .toList();
    }
}
