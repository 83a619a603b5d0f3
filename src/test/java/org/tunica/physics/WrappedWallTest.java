package org.tunica.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wall area is kept: plane geometry, evaluated in closed form. */
class WrappedWallTest {
    private final WrappedWall relaxed = WrappedWall.measured(6.0, 0.30);

    @ParameterizedTest
    @CsvSource({"0.30, 1.041640786", "0.60, 0.838749457", "0.93, 0.674649494", "1.20, 0.574823935"})
    void wrappedOnARadius(double radiusMm, double thicknessMm) {
        assertEquals(thicknessMm, relaxed.thicknessOnRadiusMm(radiusMm), 1e-9);
    }

    @Test
    void areaAndSpasm() {
        assertEquals(5.372123438, relaxed.areaMm2(), 1e-9);
        assertEquals(0.765153077, relaxed.thicknessAtDiameterMm(3.0), 1e-9);
        assertEquals(1.014589803, relaxed.thicknessAtDiameterMm(2.7), 1e-9);
        WrappedWall spasm = WrappedWall.measured(3.2, 0.65);
        assertEquals(5.207189823, spasm.areaMm2(), 1e-9);
        assertEquals(0.290295219, spasm.thicknessAtDiameterMm(6), 1e-9);
    }

    @Test
    void oneVein_thinnerOnThickerDevices() {
        HeatModel model = HeatModel.of(HeatKnowledge.constants());
        double outer = 2 * (0.93 + 0.65);
        WrappedWall vein = WrappedWall.measured(outer, 0.65);
        assertEquals(0.650, model.wallOnDeviceMm("rf-bipolar-pullback", vein), 5e-4);
        assertEquals(0.554, model.wallOnDeviceMm("rf-segmental-7cm", vein), 5e-4);
        assertEquals(0.553, model.wallOnDeviceMm("laser-1470-radial", vein), 5e-4);
    }

    @Test
    void refuses() {
        assertThrows(IllegalArgumentException.class, () -> WrappedWall.measured(0.6, 0.30));
        assertThrows(IllegalArgumentException.class, () -> WrappedWall.measured(Double.NaN, 0.30));
        assertThrows(IllegalArgumentException.class, () -> relaxed.thicknessAtDiameterMm(2.0));
        assertThrows(IllegalArgumentException.class, () -> relaxed.thicknessOnRadiusMm(-1));
    }
}
