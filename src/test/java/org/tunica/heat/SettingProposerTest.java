package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The search for a setting; the limits are common practice without a source, or our own. */
class SettingProposerTest {
    private static final HeatModel MODEL = HeatModel.of(HeatKnowledge.constants());
    private static final HeatEnsemble ENSEMBLE = HeatEnsemble.of(HeatKnowledge.numbers(), 64, 1, Fineness.CALIBRATED);
    private static final HeatLimits LIMITS = HeatLimits.from(HeatKnowledge::value);
    private static final SettingProposer PROPOSER = SettingProposer.of(MODEL, ENSEMBLE, LIMITS);
    private static final VeinSlice SLICE = VeinSlice.of(0.65, 8, 27).withNerveGapMm(3);

    @Test
    void bipolarRf_highestPowerShortestTime() {
        ProposedSetting found = PROPOSER.propose("rf-bipolar-pullback", SLICE, MeasurementSpread.NONE);
        assertEquals(Death.AT_ONCE, found.death());
        assertTrue(found.staysWithinLimits());
        assertTrue(found.spread().killProbability() >= LIMITS.wishedKillProbability());
        HeatSetting.Pulled setting = (HeatSetting.Pulled) found.setting();
        // a few draws choose the start, so the search may be one step late, never two
        assertFalse(does(
                setting.powerW(),
                setting.pullbackSPerCm() - 2 * LIMITS.pullbackSPerCm().step()));
        double powerAbove = setting.powerW() + 2 * LIMITS.powerW().step();
        for (int i = 4; i < LIMITS.pullbackSPerCm().count(); i++) {
            assertFalse(does(powerAbove, LIMITS.pullbackSPerCm().at(i)));
        }
        assertEquals(SettingLimit.CHAR, found.limit());
    }

    /** Kills as wished without likely charring. */
    private static boolean does(double powerW, double pullback) {
        HeatSetting setting = new HeatSetting.Pulled("rf-bipolar-pullback", powerW, pullback);
        HeatSpread spread = ENSEMBLE.run(setting, SLICE, MeasurementSpread.NONE);
        return spread.killProbability() >= LIMITS.wishedKillProbability()
                && spread.charProbability() <= LIMITS.mostCharProbability();
    }

    @Test
    void thinWall_stopsAtTheHighestPower() {
        ProposedSetting found =
                PROPOSER.propose("laser-1470-radial", VeinSlice.of(0.45, 8, 27), MeasurementSpread.NONE);
        assertEquals(Death.AT_ONCE, found.death());
        assertTrue(found.staysWithinLimits());
        assertEquals(SettingLimit.HIGHEST_POWER, found.limit());
        assertEquals(LIMITS.powerW().max(), ((HeatSetting.Pulled) found.setting()).powerW());
    }

    @Test
    void thickWall_diesLaterWhereItCannotDieAtOnce() {
        ProposedSetting found = PROPOSER.propose("laser-1470-radial", SLICE, MeasurementSpread.NONE);
        assertEquals(Death.AT_ONCE_OR_LATER, found.death());
        assertTrue(found.staysWithinLimits());
        assertTrue(found.spread().charProbability() <= LIMITS.mostCharProbability());
        assertTrue(found.spread().delayedProbability() >= LIMITS.wishedKillProbability());
        assertTrue(found.spread().killProbability() < LIMITS.wishedKillProbability());
    }

    @Test
    void veryThickWall_bestCompromiseAndWhy() {
        ProposedSetting found = PROPOSER.propose("laser-1940-radial", VeinSlice.of(1.4, 8, 27), MeasurementSpread.NONE);
        assertEquals(Death.NOT_THROUGH, found.death());
        assertFalse(found.staysWithinLimits());
        assertEquals(SettingLimit.CHAR, found.limit());
    }

    @Test
    void nerveBesideTheVeinWithoutTumescence_stopsTheSearch() {
        VeinSlice bare = VeinSlice.of(0.65, 0, 37).withNerveGapMm(1);
        ProposedSetting found = PROPOSER.propose("rf-bipolar-pullback", bare, MeasurementSpread.NONE);
        assertFalse(found.death() != Death.NOT_THROUGH && found.staysWithinLimits());
        assertEquals(SettingLimit.NERVE, found.limit());
    }

    @Test
    void nerveSomewhatFurther_isSparedEvenIfTheWallIsNot() {
        VeinSlice bare = VeinSlice.of(0.9, 0, 37).withNerveGapMm(1.6);
        ProposedSetting found = PROPOSER.propose("rf-bipolar-pullback", bare, MeasurementSpread.NONE);
        assertTrue(LIMITS.nerve().accepts(found.run().nerve().orElseThrow()));
    }

    @Test
    void forwardTipThatAlwaysChars_saysSo() {
        ProposedSetting found = PROPOSER.propose("laser-1470-forward", SLICE, MeasurementSpread.NONE);
        assertFalse(found.staysWithinLimits());
        assertEquals(SettingLimit.CHAR, found.limit());
    }

    @Test
    void elementAndSteam_useTheirOwnSettings() {
        ProposedSetting held = PROPOSER.propose("rf-segmental-7cm", VeinSlice.of(0.55, 8, 27), MeasurementSpread.NONE);
        assertTrue(((HeatSetting.Held) held.setting()).cycles() <= LIMITS.mostCycles());
        ProposedSetting steam = PROPOSER.propose("steam", VeinSlice.of(0.3, 8, 27), MeasurementSpread.NONE);
        assertTrue(((HeatSetting.Pulsed) steam.setting()).pulsesPerCm() <= LIMITS.mostPulsesPerCm());
    }

    @Test
    void ladders_keepCeilingsAndFloor() {
        for (List<HeatSetting> ladder : HeatSetting.Pulled.ladders("microwave", LIMITS)) {
            for (HeatSetting setting : ladder) {
                HeatSetting.Pulled pulled = (HeatSetting.Pulled) setting;
                assertTrue(pulled.powerW() <= LIMITS.powerW().max());
                assertTrue(pulled.pullbackSPerCm() <= LIMITS.pullbackSPerCm().max());
                assertTrue(pulled.energyJPerCm() >= LIMITS.leastEnergyJPerCm());
                assertTrue(pulled.energyJPerCm() <= LIMITS.mostEnergyJPerCm());
            }
        }
    }

    @Test
    void sameInput_sameProposal() {
        VeinSlice thin = VeinSlice.of(0.4, 8, 27).withNerveGapMm(5).withSkinGapMm(12);
        MeasurementSpread spread = new MeasurementSpread(0.05, 1, 0.5, 1);
        assertEquals(
                PROPOSER.propose("rf-bipolar-pullback", thin, spread),
                PROPOSER.propose("rf-bipolar-pullback", thin, spread));
    }

    @Test
    void warmth_linesOfNerve() {
        HeatLimits.Warmth lines = LIMITS.nerve();
        assertTrue(lines.accepts(new WarmedPoint(3, 49.9, 39.9)));
        assertFalse(lines.accepts(new WarmedPoint(3, 50, 1)));
        assertFalse(lines.accepts(new WarmedPoint(3, 44, 40)));
    }

    @Test
    void lesserWish_lessEnergy() {
        HeatLimits lesser =
                HeatLimits.from(id -> id.equals("heat.setting.kill-probability") ? 0.3 : HeatKnowledge.value(id));
        VeinSlice thin = VeinSlice.of(0.45, 8, 27);
        HeatSetting.Pulled wished =
                (HeatSetting.Pulled) PROPOSER.propose("rf-bipolar-pullback", thin, MeasurementSpread.NONE)
                        .setting();
        HeatSetting.Pulled less = (HeatSetting.Pulled) SettingProposer.of(MODEL, ENSEMBLE, lesser)
                .propose("rf-bipolar-pullback", thin, MeasurementSpread.NONE)
                .setting();
        assertTrue(less.powerW() >= wished.powerW());
        assertTrue(less.energyJPerCm() < wished.energyJPerCm());
    }

    /** Draws are coarse and end early; what is shown for the slice as measured is not. */
    @Test
    void runOfTheProposal_isThatOfTheCalibratedModel() {
        for (String device : List.of("rf-bipolar-pullback", "laser-1470-forward")) {
            ProposedSetting found = PROPOSER.propose(device, SLICE, MeasurementSpread.NONE);
            assertEquals(MODEL.run(found.setting(), SLICE), found.run(), device);
        }
    }

    @Test
    void refuses_unknownDevice() {
        assertThrows(IllegalArgumentException.class, () -> PROPOSER.propose("adhesive", SLICE, MeasurementSpread.NONE));
    }
}
