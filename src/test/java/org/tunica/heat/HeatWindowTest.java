package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The map of settings against single runs of the model; no clinical claim of its own. */
class HeatWindowTest {
    private static final HeatModel MODEL = HeatModel.of(HeatKnowledge.constants());
    private static final HeatLimits LIMITS = HeatLimits.from(HeatKnowledge::value);
    private static final VeinSlice SLICE =
            VeinSlice.of(0.55, 8, 27).withNerveGapMm(1).withSkinGapMm(12);
    private static final SettingAxis POWERS_W = new SettingAxis(6, 3, 4);
    private static final SettingAxis PULLBACKS = new SettingAxis(2, 1, 13);

    /** The lines are straight between nodes 1 s/cm apart; the curves of the model bend, the char line jumps. */
    private static final double OFF_S_PER_CM = 0.2;

    private static HeatWindow window(String device, VeinSlice slice) {
        return HeatWindow.of(MODEL, LIMITS, device, slice, POWERS_W, PULLBACKS);
    }

    @Test
    void documentationExample_shortestPullbackThatKills() {
        HeatWindow window = window("rf-bipolar-pullback", SLICE);
        double atOnce = window.shortestSPerCm(WindowLine.DIES_AT_ONCE, 0).orElseThrow();
        double later = window.shortestSPerCm(WindowLine.DIES_LATER, 0).orElseThrow();
        assertTrue(later < atOnce, later + " before " + atOnce);
        assertTrue(window.reached(WindowLine.DIES_AT_ONCE, 0, PULLBACKS.count() - 1));
        assertFalse(window.reached(WindowLine.DIES_LATER, 0, 0));
    }

    @Test
    void nodes_areSingleRuns() {
        HeatWindow window = window("laser-1470-radial", SLICE);
        for (int power = 0; power < POWERS_W.count(); power++) {
            HeatSetting setting = new HeatSetting.Pulled("laser-1470-radial", POWERS_W.at(power), PULLBACKS.at(5));
            assertEquals(MODEL.run(setting, SLICE), window.run(power, 5));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"rf-bipolar-pullback", "laser-1470-radial", "microwave"})
    void lines_bracketTheirLevel(String device) {
        HeatWindow window = window(device, SLICE);
        int bracketed = 0;
        for (WindowLine line : WindowLine.values()) {
            for (int power = 0; power < POWERS_W.count(); power++) {
                OptionalDouble at = window.shortestSPerCm(line, power);
                if (at.isPresent() && at.getAsDouble() > PULLBACKS.min()) {
                    double watt = POWERS_W.at(power);
                    double off = line == WindowLine.CHAR ? PULLBACKS.step() : OFF_S_PER_CM;
                    assertTrue(excess(line, device, watt, at.getAsDouble() - off) < 0, line + " at " + watt);
                    assertTrue(excess(line, device, watt, at.getAsDouble() + off) >= 0, line + " at " + watt);
                    bracketed++;
                }
            }
        }
        assertTrue(bracketed >= 8, "only " + bracketed);
    }

    private static double excess(WindowLine line, String device, double watt, double sPerCm) {
        return line.excess(MODEL.run(new HeatSetting.Pulled(device, watt, sPerCm), SLICE), LIMITS);
    }

    @Test
    void borders_stayOnTheMapAndRunToHigherPower() {
        HeatWindow window = window("rf-bipolar-pullback", SLICE);
        for (WindowLine line : WindowLine.values()) {
            for (List<HeatWindow.Node> piece : window.border(line)) {
                double before = 0;
                for (HeatWindow.Node node : piece) {
                    assertTrue(node.powerW() > before, line + " " + piece);
                    assertTrue(node.powerW() >= POWERS_W.min() && node.powerW() <= POWERS_W.max());
                    assertTrue(node.pullbackSPerCm() >= PULLBACKS.min() && node.pullbackSPerCm() <= PULLBACKS.max());
                    before = node.powerW();
                }
            }
        }
    }

    @Test
    void borderThatLeavesTheMap_endsOnItsEdge() {
        HeatWindow window = window("rf-bipolar-pullback", SLICE);
        assertTrue(window.shortestSPerCm(WindowLine.CHAR, 0).isEmpty());
        List<HeatWindow.Node> border = window.border(WindowLine.CHAR).get(0);
        assertEquals(PULLBACKS.max(), border.get(0).pullbackSPerCm());
        assertTrue(border.get(0).powerW() > POWERS_W.at(0) && border.get(0).powerW() < POWERS_W.at(1));
        assertEquals(POWERS_W.at(1), border.get(1).powerW());
    }

    @Test
    void harmReachedByEveryPullback_isAtTheFirst() {
        SettingAxis slow = new SettingAxis(8, 1, 3);
        HeatWindow window = HeatWindow.of(MODEL, LIMITS, "laser-1470-forward", SLICE, POWERS_W, slow);
        assertEquals(slow.min(), window.shortestSPerCm(WindowLine.CHAR, 3).orElseThrow());
    }

    @Test
    void nearerNerve_isReachedSooner_andNoneWhenNotKnown() {
        VeinSlice near = SLICE.withNerveGapMm(0.5);
        for (int power = 0; power < POWERS_W.count(); power++) {
            double far = window("rf-bipolar-pullback", SLICE)
                    .shortestSPerCm(WindowLine.NERVE, power)
                    .orElse(Double.POSITIVE_INFINITY);
            double sooner = window("rf-bipolar-pullback", near)
                    .shortestSPerCm(WindowLine.NERVE, power)
                    .orElseThrow();
            assertTrue(sooner < far, sooner + " against " + far);
        }
        assertEquals(
                List.of(),
                window("rf-bipolar-pullback", VeinSlice.of(0.55, 8, 27)).border(WindowLine.NERVE));
    }

    @Test
    void usualAxes_showWhatLiesBehindTheCeilings() {
        HeatWindow window = HeatWindow.of(MODEL, LIMITS, "rf-bipolar-pullback", SLICE, 10);
        assertTrue(window.powerW().max() > LIMITS.powerW().max());
        assertTrue(window.pullbackSPerCm().max() > LIMITS.pullbackSPerCm().max());
        assertEquals(LIMITS.powerW().min(), window.powerW().min());
        HeatWindow strong = HeatWindow.of(MODEL, LIMITS, "microwave", SLICE, 70);
        assertTrue(MODEL.validity().power().holds(strong.powerW().max()));
        assertTrue(strong.powerW().max() > 50);
    }

    @Test
    void axis_takesHalfStepsWhereThereIsRoomAndWholeMultiplesWhereNot() {
        HeatLimits.Steps offered = new HeatLimits.Steps(4, 15, 1);
        assertEquals(new SettingAxis(4, 0.5, 33), SettingAxis.upTo(20, offered));
        assertEquals(new SettingAxis(4, 1, 18), SettingAxis.upTo(21.9, offered));
        assertEquals(new SettingAxis(4, 2, 29), SettingAxis.upTo(60, offered));
    }

    @Test
    void heldElementAndSteam_getARunForEachNumber() {
        assertTrue(RepeatedHeat.fits(MODEL, LIMITS, "steam"));
        assertFalse(RepeatedHeat.fits(MODEL, LIMITS, "microwave"));
        List<HeatRun> runs = RepeatedHeat.of(MODEL, LIMITS, "rf-segmental-7cm", SLICE);
        assertEquals(LIMITS.mostCycles(), runs.size());
        assertEquals(MODEL.run(new HeatSetting.Held("rf-segmental-7cm", 1), SLICE), runs.get(0));
        assertEquals(
                LIMITS.mostPulsesPerCm(),
                RepeatedHeat.of(MODEL, LIMITS, "steam", SLICE).size());
    }

    @Test
    void refuses_theOtherKindOfDevice() {
        assertThrows(IllegalArgumentException.class, () -> window("steam", SLICE));
        assertThrows(IllegalArgumentException.class, () -> RepeatedHeat.of(MODEL, LIMITS, "microwave", SLICE));
        assertThrows(
                IllegalArgumentException.class, () -> HeatWindow.of(MODEL, LIMITS, "microwave", SLICE, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new SettingAxis(1, 1, 1));
    }
}
