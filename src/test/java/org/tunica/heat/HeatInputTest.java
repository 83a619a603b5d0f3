package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Bad input is refused by name and value; what deserves less trust is flagged. */
class HeatInputTest {
    private static final String RF = "rf-bipolar-pullback";

    private final HeatModel model = HeatModel.of(HeatKnowledge.constants());
    private final VeinSlice slice = VeinSlice.of(0.65, 8, 27);
    private final HeatSetting setting = new HeatSetting.Pulled(RF, 6, 12);

    @Test
    void refusesByNameAndValue() {
        refuses("wallMm", "NaN", () -> VeinSlice.of(Double.NaN, 8, 27));
        refuses("wallMm", "0.0", () -> VeinSlice.of(0, 8, 27));
        refuses("wallMm", "-0.3", () -> VeinSlice.of(-0.3, 8, 27));
        refuses("tumescentC", "Infinity", () -> VeinSlice.of(0.65, 8, Double.POSITIVE_INFINITY));
        refuses("tumescentMm", "-1.0", () -> VeinSlice.of(0.65, -1, 27));
        refuses("nerveGapMm", "-2.0", () -> slice.withNerveGapMm(-2));
        refuses("powerW", "0.0", () -> new HeatSetting.Pulled(RF, 0, 12));
        refuses("pullbackSPerCm", "NaN", () -> new HeatSetting.Pulled(RF, 6, Double.NaN));
        refuses("cycles", "0", () -> new HeatSetting.Held("rf-segmental-7cm", 0));
        refuses("wallMm", "2.5", () -> model.run(setting, VeinSlice.of(2.5, 8, 27)));
        refuses("tumescentMm", "16.0", () -> model.run(setting, VeinSlice.of(0.65, 16, 27)));
        refuses("tumescentC", "44.0", () -> model.run(setting, VeinSlice.of(0.65, 8, 44)));
        refuses("filmMm", "3.0", () -> model.run(setting, slice.withFilmMm(3)));
        refuses("bloodFraction", "1.1", () -> model.run(setting, slice.withBloodFraction(1.1)));
        refuses("powerW", "80.0", () -> model.run(new HeatSetting.Pulled(RF, 80, 12), slice));
        refuses("pullbackSPerCm", "60.0", () -> model.run(new HeatSetting.Pulled(RF, 6, 60), slice));
    }

    @Test
    void refusesTheWrongKind() {
        refuses("deviceId", "adhesive", () -> model.run(new HeatSetting.Pulled("adhesive", 6, 12), slice));
        refuses("Held", "Pulled", () -> model.run(new HeatSetting.Pulled("rf-segmental-7cm", 6, 12), slice));
        refuses("Pulsed", "Pulled", () -> model.run(new HeatSetting.Pulled("steam", 6, 12), slice));
        refuses("contact", "NEAR_SIDE", () -> model.run(setting, slice, Contact.NEAR_SIDE));
    }

    private static void refuses(String name, String value, Executable act) {
        String message = assertThrows(IllegalArgumentException.class, act).getMessage();
        assertTrue(message.contains(name) && message.contains(value), message);
    }

    @Test
    void flags() {
        assertEquals(Set.of(), model.run(setting, slice).flags());
        assertEquals(
                Set.of(HeatFlag.NOT_CALIBRATED),
                model.run(new HeatSetting.Held("rf-segmental-7cm", 1), slice).flags());
        assertEquals(
                Set.of(HeatFlag.NOT_CALIBRATED),
                model.run(new HeatSetting.Pulled("laser-1940-radial", 6, 6), slice)
                        .flags());
        assertEquals(
                Set.of(HeatFlag.OUTSIDE_CALIBRATION, HeatFlag.CHARRING),
                model.run(new HeatSetting.Pulled(RF, 30, 4), slice).flags());
        assertEquals(
                Set.of(HeatFlag.BLOOD_NOT_AS_USUAL, HeatFlag.FILM_NOT_AS_USUAL),
                model.run(
                                new HeatSetting.Pulled("laser-1470-radial", 8, 4),
                                slice.withFilmMm(0.4).withBloodFraction(0.5))
                        .flags());
        HeatSetting crawling = new HeatSetting.Pulled("laser-1470-radial", 4, 28);
        assertTrue(model.run(crawling, slice).flags().contains(HeatFlag.AXIAL_CONDUCTION));
    }

    @Test
    void everyDeviceRuns_andItsBookCloses() {
        assertEquals(23, model.devices().size());
        for (String device : model.devices()) {
            HeatSetting usual = device.startsWith("rf-segmental")
                    ? new HeatSetting.Held(device, 2)
                    : device.equals("steam")
                            ? new HeatSetting.Pulsed(device, 2)
                            : new HeatSetting.Pulled(device, 10, 8);
            HeatRun run = model.run(usual, slice.withNerveGapMm(3).withSkinGapMm(12));
            assertTrue(
                    run.energy().imbalance() < 1e-11,
                    device + " " + run.energy().imbalance());
            assertTrue(run.delayedDepthMm() >= run.killDepthMm(), device);
            assertTrue(run.nerve().orElseThrow().peakC() > 27, device);
        }
    }

    @Test
    void probeBeyondTheModel_staysAtBodyTemperature() {
        HeatRun run = model.run(setting, slice.withSkinGapMm(45).withNerveGapMm(0));
        assertEquals(37, run.skin().orElseThrow().peakC());
        assertEquals(0, run.skin().orElseThrow().cem43Min());
        double nerveC = run.nerve().orElseThrow().peakC();
        assertEquals(run.outerWallPeakC(), nerveC, 1.0);
    }

    @Test
    void noTumescence_warmsMoreThanTumescence() {
        // Closing facts of the bench on tumescence: common practice, no source.
        double with = model.run(setting, slice.withNerveGapMm(2))
                .nerve()
                .orElseThrow()
                .peakC();
        double without = model.run(setting, VeinSlice.of(0.65, 0, 37).withNerveGapMm(2))
                .nerve()
                .orElseThrow()
                .peakC();
        assertTrue(without > with + 10, with + " " + without);
    }

    @Test
    void leaningTip_closureFromTheFarSide_charFromTheNear() {
        HeatSetting forward = new HeatSetting.Pulled("laser-1470-forward", 10, 8);
        HeatRun both = model.run(forward, slice.withNerveGapMm(1));
        HeatModel fine = HeatModel.of(HeatKnowledge.constants(), Fineness.CALIBRATED.withStepFactor(0.5));
        HeatRun near = fine.run(forward, slice.withNerveGapMm(1), Contact.NEAR_SIDE);
        HeatRun far = model.run(forward, slice.withNerveGapMm(1), Contact.FAR_SIDE);
        assertEquals(far.killDepthMm(), both.killDepthMm());
        assertEquals(far.delayedDepthMm(), both.delayedDepthMm());
        assertEquals(near.charIndex(), both.charIndex());
        assertEquals(near.perforationIndex(), both.perforationIndex());
        assertEquals(near.nerve(), both.nerve());
        assertTrue(near.killDepthMm() > far.killDepthMm());
    }

    @Test
    void sameInput_sameBits_onAnyThread() throws InterruptedException {
        HeatRun here = model.run(setting, slice);
        model.run(new HeatSetting.Pulled("laser-1470-jacket", 10, 8), slice);
        HeatRun[] there = new HeatRun[1];
        Thread thread = new Thread(() -> there[0] = model.run(setting, slice));
        thread.start();
        thread.join();
        assertEquals(here, there[0]);
        assertEquals(here, model.run(setting, slice));
    }
}
