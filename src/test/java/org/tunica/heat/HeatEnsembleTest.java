package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Draws over what is not known. Joint figures: the reference model, 400 draws of its own distributions. */
class HeatEnsembleTest {
    private static final HeatEnsemble ENSEMBLE = HeatEnsemble.of(HeatKnowledge.numbers(), 128, 1, Fineness.CALIBRATED);
    private static final VeinSlice SLICE = VeinSlice.of(0.65, 8, 27);
    private static final HeatSetting RF = new HeatSetting.Pulled("rf-bipolar-pullback", 6, 12);

    @ParameterizedTest
    @CsvSource({
        // device, W, s/cm, immediate depth in walls 10 50 90 %, probability of char, allowance of the outer points
        "rf-bipolar-pullback, 6, 12, 0.96, 1.10, 1.26, 0.00, 0.06",
        "rf-bipolar-pullback, 18, 4, 0.76, 0.87, 1.02, 0.65, 0.06",
        "rf-bipolar-pullback, 18, 1, 0.38, 0.44, 0.50, 0.00, 0.06",
        "laser-1470-radial, 10, 8, 0.82, 0.93, 1.03, 0.14, 0.06",
        "laser-1470-radial, 10, 4, 0.43, 0.56, 0.67, 0.00, 0.06",
        // The spread of the tip share of a bare fibre differs most from that of the reference.
        "laser-810-forward, 10, 6, 0.20, 0.31, 0.47, 0.00, 0.14"
    })
    void jointFigures(
            String device,
            double powerW,
            double pullback,
            double p10,
            double p50,
            double p90,
            double chars,
            double by) {
        HeatSpread spread = ENSEMBLE.run(
                new HeatSetting.Pulled(device, powerW, pullback), SLICE, MeasurementSpread.NONE, Contact.CONCENTRIC);
        assertEquals(128, spread.draws());
        assertEquals(p10, spread.killDepthPerWall().p10(), by);
        assertEquals(p50, spread.killDepthPerWall().p50(), 0.03);
        assertEquals(p90, spread.killDepthPerWall().p90(), by);
        assertEquals(chars, spread.charProbability(), 0.12);
    }

    @Test
    void jointProbabilities() {
        assertEquals(0.80, ENSEMBLE.run(RF, SLICE, MeasurementSpread.NONE).killProbability(), 0.08);
        HeatSetting radial = new HeatSetting.Pulled("laser-1470-radial", 10, 8);
        assertEquals(1.00, ENSEMBLE.run(radial, SLICE, MeasurementSpread.NONE).delayedProbability(), 0.02);
        HeatSpread quick =
                ENSEMBLE.run(new HeatSetting.Pulled("rf-bipolar-pullback", 18, 1), SLICE, MeasurementSpread.NONE);
        assertEquals(0.65, quick.delayedDepthPerWall().p10(), 0.06);
        assertEquals(0.77, quick.delayedDepthPerWall().p50(), 0.03);
        assertEquals(0.90, quick.delayedDepthPerWall().p90(), 0.06);
    }

    @Test
    void sameSeed_sameBits_otherSeed_nearlyThere() {
        HeatEnsemble again = HeatEnsemble.of(HeatKnowledge.numbers(), 128, 1, Fineness.CALIBRATED);
        HeatEnsemble other = HeatEnsemble.of(HeatKnowledge.numbers(), 128, 2, Fineness.CALIBRATED);
        HeatSpread spread = ENSEMBLE.run(RF, SLICE, MeasurementSpread.NONE);
        assertEquals(spread, again.run(RF, SLICE, MeasurementSpread.NONE));
        HeatSpread shifted = other.run(RF, SLICE, MeasurementSpread.NONE);
        assertNotEquals(spread, shifted);
        assertEquals(spread.killDepthMm().p50(), shifted.killDepthMm().p50(), 0.02);
        assertEquals(spread.killProbability(), shifted.killProbability(), 0.08);
    }

    @Test
    void nothingUncertain_everyDrawIsTheModel() {
        HeatNumbers exact = new HeatNumbers(HeatKnowledge::value, HeatKnowledge::value, HeatKnowledge::value);
        HeatSpread spread = HeatEnsemble.of(exact, 8, 1, Fineness.CALIBRATED).run(RF, SLICE, MeasurementSpread.NONE);
        double depthMm = HeatModel.of(HeatKnowledge.constants()).run(RF, SLICE).killDepthMm();
        assertEquals(depthMm, spread.killDepthMm().p10());
        assertEquals(depthMm, spread.killDepthMm().p90());
        assertEquals(1, spread.killProbability());
    }

    @Test
    void measurementErrors_widen() {
        VeinSlice near = SLICE.withNerveGapMm(2).withSkinGapMm(10);
        HeatSpread exact = ENSEMBLE.run(RF, near, MeasurementSpread.NONE);
        HeatSpread measured = ENSEMBLE.run(RF, near, new MeasurementSpread(0.1, 1, 0.8, 2));
        assertTrue(width(measured.killDepthPerWall()) > 1.2 * width(exact.killDepthPerWall()));
        Interval nerve = exact.nerve().orElseThrow().peakC();
        assertTrue(width(measured.nerve().orElseThrow().peakC()) > width(nerve));
        assertTrue(nerve.p10() < nerve.p50() && nerve.p50() < nerve.p90());
    }

    private static double width(Interval interval) {
        return interval.p90() - interval.p10();
    }

    @Test
    void refuses() {
        assertThrows(
                IllegalArgumentException.class,
                () -> ENSEMBLE.run(RF, VeinSlice.of(2.5, 8, 27), MeasurementSpread.NONE));
        assertThrows(IllegalArgumentException.class, () -> new MeasurementSpread(-0.1, 0, 0, 0));
        assertThrows(
                IllegalArgumentException.class,
                () -> HeatEnsemble.of(HeatKnowledge.numbers(), 0, 1, Fineness.CALIBRATED));
    }

    @Test
    void draws_fillTheirDistributions() {
        Draws draws = new Draws(1000, 7);
        double[] even = draws.even();
        Arrays.sort(even);
        for (int i = 0; i < even.length; i++) {
            assertTrue(even[i] >= i / 1000.0 && even[i] < (i + 1) / 1000.0);
        }
        assertEquals((1 + 2 + 5) / 3.0, mean(draws.within(1.9, 2, 5)) + (1 - 1.9) / 3, 0.01);
        double[] wide = Arrays.stream(draws.within(1, 2, 100)).map(Math::log10).toArray();
        assertEquals(1, mean(wide), 0.005);
        double[] normal = draws.normal();
        assertEquals(0, mean(normal), 0.005);
        assertEquals(1, mean(Arrays.stream(normal).map(x -> x * x).toArray()), 0.05);
        assertEquals(1.2816, Interval.of(normal).p90(), 0.01);
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }
}
