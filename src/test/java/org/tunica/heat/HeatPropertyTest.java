package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What nature does not allow to be otherwise. Below charring, where steps do not decide the answer. */
class HeatPropertyTest {
    private static final HeatModel MODEL = HeatModel.of(HeatKnowledge.constants());
    private static final String[] DEVICES = {
        "rf-bipolar-pullback", "laser-1470-radial", "microwave", "laser-980-forward"
    };
    /** Rounding of steps and of shells, mm. */
    private static final double NOISE_MM = 0.004;

    @Property(tries = 60, seed = "1")
    void thickerWall_neverKilledMore(
            @ForAll @DoubleRange(min = 0.25, max = 1.4) double wallMm,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double moreMm,
            @ForAll @IntRange(min = 0, max = 3) int device,
            @ForAll @DoubleRange(min = 3, max = 12) double powerW,
            @ForAll @DoubleRange(min = 2, max = 10) double pullback) {
        HeatSetting setting = new HeatSetting.Pulled(DEVICES[device], powerW, pullback);
        HeatRun thin = MODEL.run(setting, VeinSlice.of(wallMm, 8, 27));
        HeatRun thick = MODEL.run(setting, VeinSlice.of(wallMm + moreMm, 8, 27));
        // The share of the wall killed falls, so a thicker wall never needs less energy to be killed whole.
        assertTrue(thick.killDepthPerWall() <= thin.killDepthPerWall() + 0.01);
        assertTrue(thick.wallFractionDelayed() <= thin.wallFractionDelayed() + 0.01);
    }

    @Property(tries = 60, seed = "2")
    void longerDwell_neverKillsLess(
            @ForAll @DoubleRange(min = 1, max = 12) double pullback,
            @ForAll @DoubleRange(min = 1.02, max = 2) double longer,
            @ForAll @IntRange(min = 0, max = 3) int device,
            @ForAll @DoubleRange(min = 3, max = 15) double powerW) {
        VeinSlice slice = VeinSlice.of(0.65, 8, 27);
        HeatRun brief = MODEL.run(new HeatSetting.Pulled(DEVICES[device], powerW, pullback), slice);
        HeatRun slow = MODEL.run(new HeatSetting.Pulled(DEVICES[device], powerW, pullback * longer), slice);
        assertTrue(slow.killDepthMm() >= brief.killDepthMm() - NOISE_MM);
        assertTrue(slow.delayedDepthMm() >= brief.delayedDepthMm() - NOISE_MM);
    }

    @Property(tries = 60, seed = "3")
    void nearerNerve_neverCooler(
            @ForAll @DoubleRange(min = 0, max = 5) double gapMm,
            @ForAll @DoubleRange(min = 0.01, max = 2) double furtherMm,
            @ForAll @IntRange(min = 0, max = 3) int device,
            @ForAll @DoubleRange(min = 3, max = 25) double powerW,
            @ForAll @DoubleRange(min = 1, max = 12) double pullback) {
        HeatSetting setting = new HeatSetting.Pulled(DEVICES[device], powerW, pullback);
        // Started at body temperature: in a cold tumescent layer the fat beyond it is warmer to begin with.
        VeinSlice slice = VeinSlice.of(0.65, 8, 37);
        WarmedPoint near =
                MODEL.run(setting, slice.withNerveGapMm(gapMm)).nerve().orElseThrow();
        WarmedPoint far = MODEL.run(setting, slice.withNerveGapMm(gapMm + furtherMm))
                .nerve()
                .orElseThrow();
        assertTrue(near.peakC() >= far.peakC() - 1e-9);
        assertTrue(near.cem43Min() >= far.cem43Min() - 1e-9);
    }

    @Property(tries = 60, seed = "4")
    void energyIsKept(
            @ForAll @DoubleRange(min = 0.2, max = 1.8) double wallMm,
            @ForAll @DoubleRange(min = 0, max = 14) double tumescentMm,
            @ForAll @DoubleRange(min = 5, max = 37) double startC,
            @ForAll @IntRange(min = 0, max = 3) int device,
            @ForAll @DoubleRange(min = 1, max = 40) double powerW,
            @ForAll @DoubleRange(min = 0.6, max = 28) double pullback) {
        HeatSetting setting = new HeatSetting.Pulled(DEVICES[device], powerW, pullback);
        HeatRun run = MODEL.run(setting, VeinSlice.of(wallMm, tumescentMm, startC));
        assertTrue(run.energy().imbalance() < 1e-9);
        assertTrue(run.innerWallDryness() >= 0 && run.innerWallDryness() <= 1 + 1e-12);
    }

    @Property(tries = 30, seed = "5")
    void mmOrM_sameAnswer(@ForAll @DoubleRange(min = 0.5, max = 8) double depthMm) {
        // Conduction is the same twice as far after four times the time: kernel in SI against itself.
        assertEquals(warmedC(1e-3, depthMm * 1e-3, 5), warmedC(2e-3, 2 * depthMm * 1e-3, 20), 1e-9);
    }

    private static double warmedC(double innerM, double depthM, double seconds) {
        RadialGrid grid = TestTissue.wall(innerM, innerM * 31, 300);
        Bioheat kernel = TestTissue.started(grid, TestTissue.solid(0.5, 3.7e6, 37), 37);
        for (int i = 0; i < 50; i++) {
            kernel.rest();
            kernel.sourceWPerM()[0] = 100;
            kernel.step(seconds / 50);
        }
        return TestTissue.atC(kernel, innerM + depthM);
    }

    @Property(tries = 20, seed = "6")
    void noPower_noDeath(@ForAll @DoubleRange(min = 0.3, max = 1.5) double wallMm) {
        HeatRun run = MODEL.run(new HeatSetting.Pulled("rf-bipolar-pullback", 0.5, 0.6), VeinSlice.of(wallMm, 8, 27));
        assertEquals(0, run.killDepthMm());
        assertEquals(0, run.delayedDepthMm());
        assertEquals(0, run.charIndex());
    }
}
