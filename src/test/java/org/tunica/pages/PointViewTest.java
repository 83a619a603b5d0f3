package org.tunica.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.drawing.WallCoats;
import org.tunica.heat.HeatWindow;
import org.tunica.physics.SettingReach;
import org.tunica.physics.WindowPoint;

/** One setting on one wall, held against the map it lies in. */
class PointViewTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final WallCoats COATS = WallCoats.of(TUNICA.knowledge());

    private static CaseFile demo(String name) {
        return TUNICA.readCase("case", CaseTree.demo(name).bytes());
    }

    private static PointView view(CaseFile caseFile, String technique, double powerW, double pullbackSPerCm) {
        return PointView.of(
                TUNICA.heat().point(caseFile, "L1", technique, powerW, pullbackSPerCm), COATS, TUNICA.knowledge());
    }

    @Test
    void aPointIsTheSameRunAsThatNodeOfTheMap() {
        CaseFile nerve = demo("small-saphenous-near-sural-nerve");
        HeatWindow map = TUNICA.heat()
                .heatWindow(nerve, "L1", "rf-bipolar-pullback")
                .map()
                .orElseThrow();
        for (int power = 0; power < map.powerW().count(); power += 5) {
            for (int pullback = 0; pullback < map.pullbackSPerCm().count(); pullback += 6) {
                WindowPoint point = TUNICA.heat()
                        .point(
                                nerve,
                                "L1",
                                "rf-bipolar-pullback",
                                map.powerW().at(power),
                                map.pullbackSPerCm().at(pullback));
                assertEquals(map.run(power, pullback), point.run());
            }
        }
    }

    @Test
    void theLinearEnergyStandsBesideItsPowerAndPullback() {
        PointView view = view(demo("straight-thigh-trunk"), "laser-1470-radial", 10, 7);
        assertEquals("10 W, pullback 7 s/cm, which makes 70 J/cm", view.setting());
    }

    @Test
    void lessThanAllOfACoatIsNeverShownAsAll() {
        WallCoats.Taken nearly = new WallCoats(0.05, 0.45).within(0.999);
        assertEquals(1, nearly.mediaShare());
        assertEquals(0.998, nearly.adventitiaShare(), 1e-9);
        PointView weak = view(demo("straight-thigh-trunk"), "laser-1470-radial", 7, 6);
        PointView.Line outer = weak.lines().get(2);
        assertEquals("adventitia dead", outer.what());
        assertEquals("PART OF IT LIVES", outer.means());
        assertFalse(outer.value().contains("100 %"), outer.value());
        assertTrue(weak.verdict().startsWith("The wall does not die through"), weak.verdict());
    }

    @Test
    void aGapThatIsNotRecordedIsNoNumberAndNotSafe() {
        CaseTree without = CaseTree.demo("straight-thigh-trunk").set("limbs.0.segments.0.nerve", null);
        PointView view = view(TUNICA.readCase("case", without.bytes()), "laser-1470-radial", 8, 9);
        PointView.Line nerve = view.lines().get(6);
        assertEquals("nerve", nerve.what());
        assertEquals("not recorded", nerve.value());
        assertTrue(view.verdict().endsWith("which does not mean safe."), view.verdict());
    }

    @Test
    void aCeilingPassedAndHarmsAreNamed() {
        PointView view = view(demo("small-saphenous-near-sural-nerve"), "microwave", 20, 14);
        assertTrue(view.verdict().contains("the nerve gets too warm"), view.verdict());
        assertTrue(
                view.remarks().stream()
                        .anyMatch(remark -> remark.startsWith("Pullback is ABOVE THE CEILING of 12 s/cm")),
                view.remarks().toString());
    }

    @Test
    void numbersTheModelDoesNotAnswerForAreRefusedWithTheirRange() {
        CaseFile caseFile = demo("straight-thigh-trunk");
        SettingReach.Axis power = TUNICA.heat().reach().powerW();
        FaultyInput refused =
                assertThrows(FaultyInput.class, () -> view(caseFile, "laser-1470-radial", power.max() + 1, 7));
        assertEquals("powerW", refused.faults().get(0).place());
        assertEquals(power.max(), power.moved(power.max(), 1));
        assertThrows(FaultyInput.class, () -> view(caseFile, "rf-segmental-7cm", 8, 7));
    }
}
