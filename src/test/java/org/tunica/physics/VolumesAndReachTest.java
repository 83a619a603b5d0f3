package org.tunica.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Volumes, posture, reach of drugs and of a focus: arithmetic worked out by hand calculator. */
class VolumesAndReachTest {
    @ParameterizedTest
    @CsvSource({"5, 30, 5.9", "8, 40, 20.1"})
    void lumenVolume(double diameterMm, double lengthCm, double expectedMl) {
        assertEquals(expectedMl, Lumen.volumeMl(diameterMm, lengthCm), 0.05);
    }

    /** Definition of the postural diameter change; its median in refluxing veins is 19 % (EJVES, abstract, S-0087). */
    @Test
    void posturalChange() {
        assertEquals(18.75, Lumen.posturalChangePercent(8.0, 6.5), 1e-12);
        assertEquals(8.0, Lumen.standingMm(6.5, 18.75), 1e-12);
    }

    /** Depth of kill 0.2 mm: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"0.15, 1", "0.2, 1", "0.3, 0.666667", "0.45, 0.444444", "0.65, 0.307692"})
    void foamReach(double wallMm, double expected) {
        assertEquals(expected, ChemicalKill.wallFraction(0.2, wallMm), 5e-7);
    }

    /** Focus 3.5 mm across: common practice, no source; the common width is the chord of two circles. */
    @ParameterizedTest
    @CsvSource({"1.0, 3.354102", "1.5, 3.162278", "2.0, 2.872281", "2.5, 2.449490", "3.0, 1.802776"})
    void focusCommonWidth(double spacingMm, double expectedMm) {
        assertEquals(expectedMm, new FocusCoverage(3.5, 5, spacingMm).commonWidthMm(), 5e-7);
    }

    @Test
    void focusCoversAVeinThatFitsAndCountsItsLesions() {
        FocusCoverage focus = new FocusCoverage(3.5, 5, 1.5);
        assertEquals(1, focus.share(3.1));
        assertEquals(3.162278 / 4, focus.share(4), 1e-6);
        assertEquals(21, focus.lesions(3));
    }

    @Test
    void spacingAsWideAsTheFocusLeavesGapsAndIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new FocusCoverage(3.5, 5, 3.5));
    }

    @Property(seed = "20260101")
    void aThickerWallIsNeverReachedFurther(
            @ForAll @DoubleRange(min = 0.1, max = 2) double wallMm,
            @ForAll @DoubleRange(min = 0.05, max = 1) double depthMm) {
        assertTrue(ChemicalKill.wallFraction(depthMm, wallMm + 0.05) <= ChemicalKill.wallFraction(depthMm, wallMm));
    }

    @Property(seed = "20260101")
    void aLargerVeinIsNeverCoveredMore(
            @ForAll @DoubleRange(min = 0.5, max = 10) double outerMm,
            @ForAll @DoubleRange(min = 0.5, max = 3) double spacingMm) {
        FocusCoverage focus = new FocusCoverage(3.5, 5, spacingMm);
        assertTrue(focus.share(outerMm + 0.1) <= focus.share(outerMm));
    }
}
