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

/** Closed forms of area conservation; the figures were worked out by hand calculator, independently of this code. */
class WallGeometryTest {
    private static final double EXACT = 1e-9;

    @Test
    void aVeinInSpasmIsConvertedToItsRelaxedWall() {
        WallGeometry wall = WallGeometry.ofLumen(3.0, 1.0);
        assertEquals(12.566370614, wall.areaMm2(), EXACT);
        assertEquals(0.605551275464, wall.wallAtLumenMm(6.0), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"3.0, 1.0, 6.0, 0.606", "4.0, 0.8, 7.0, 0.511", "5.0, 0.5, 5.0, 0.500"})
    void relaxedWall_checkCasesOfTheFormula(double spasmMm, double wallMm, double relaxedMm, double expectedMm) {
        assertEquals(expectedMm, WallGeometry.ofLumen(spasmMm, wallMm).wallAtLumenMm(relaxedMm), 5e-4);
    }

    @ParameterizedTest
    @CsvSource({"0.30, 1.041640786", "0.60, 0.838749457", "0.93, 0.674649494", "1.20, 0.574823935"})
    void wallWrappedOnADevice(double radiusMm, double expectedMm) {
        assertEquals(expectedMm, WallGeometry.ofOuterDiameter(6.0, 0.30).wallOnRadiusMm(radiusMm), EXACT);
    }

    @Test
    void outerDiameterForm() {
        WallGeometry wall = WallGeometry.ofOuterDiameter(6.0, 0.30);
        assertEquals(5.372123438, wall.areaMm2(), EXACT);
        assertEquals(0.765153077, wall.wallAtOuterDiameterMm(3.0), EXACT);
        assertEquals(1.014589803, wall.wallAtOuterDiameterMm(2.7), EXACT);
        WallGeometry spasm = WallGeometry.ofOuterDiameter(3.2, 0.65);
        assertEquals(5.207189823, spasm.areaMm2(), EXACT);
        assertEquals(0.290295219, spasm.wallAtOuterDiameterMm(6.0), EXACT);
    }

    @Test
    void anOuterDiameterUnderTheCollapsedOneIsRefused() {
        WallGeometry wall = WallGeometry.ofOuterDiameter(6.0, 0.30);
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> wall.wallAtOuterDiameterMm(2.0));
        assertTrue(e.getMessage().contains("outerMm"), e.getMessage());
    }

    @ParameterizedTest
    @CsvSource({"0, 0.5", "-1, 0.5", "6, 0", "6, -0.5", "NaN, 0.5", "6, Infinity"})
    void whatIsNoPositiveNumberIsRefused(double lumenMm, double wallMm) {
        assertThrows(IllegalArgumentException.class, () -> WallGeometry.ofLumen(lumenMm, wallMm));
    }

    @Property(seed = "20260101")
    void areaIsKeptAtEveryLumen(
            @ForAll @DoubleRange(min = 1, max = 20) double lumenMm,
            @ForAll @DoubleRange(min = 0.1, max = 2) double wallMm,
            @ForAll @DoubleRange(min = 0.5, max = 30) double otherMm) {
        WallGeometry wall = WallGeometry.ofLumen(lumenMm, wallMm);
        assertEquals(
                wall.areaMm2(),
                WallGeometry.ofLumen(otherMm, wall.wallAtLumenMm(otherMm)).areaMm2(),
                1e-9 * wall.areaMm2());
    }

    @Property(seed = "20260101")
    void aWiderDeviceMeetsAThinnerWall(
            @ForAll @DoubleRange(min = 1, max = 20) double lumenMm,
            @ForAll @DoubleRange(min = 0.1, max = 2) double wallMm,
            @ForAll @DoubleRange(min = 0.2, max = 1) double radiusMm) {
        WallGeometry wall = WallGeometry.ofLumen(lumenMm, wallMm);
        assertTrue(wall.wallOnRadiusMm(radiusMm + 0.1) < wall.wallOnRadiusMm(radiusMm));
        assertTrue(wall.wallOnRadiusMm(radiusMm) < wall.collapsedOuterDiameterMm() / 2);
    }
}
