package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The kernel against closed forms of heat conduction. k = 0.5 W/mK, rc = 3.7e6 J/m3K unless stated. */
class BioheatClosedFormTest {
    private static final double K = 0.5;
    private static final double RC = 3.7e6;
    private static final double STEADY_S = 1e18;

    @Test
    void lineSource_infiniteMedium() {
        // dT = q'/(4 pi k) E1(r2/(4 alpha t)); exact value in double precision. Textbook form (Carslaw, Jaeger).
        RadialGrid grid = TestTissue.growingWall(0.01e-3, 30e-3, 1600);
        Bioheat kernel = TestTissue.started(grid, TestTissue.solid(K, RC, 0), 0);
        run(kernel, 20, 8000, 100);
        assertEquals(4.6630705722, TestTissue.atC(kernel, 3e-3), 2e-4 * 4.663);
    }

    @ParameterizedTest
    @CsvSource({
        // behind mm, beside mm, moving point source K, radial limit K
        "2.5, 0.5, 394.88594120, 400.88418643",
        "10, 1.5, 55.91968604, 56.21891199",
        "25, 3.0, 12.02983791, 12.04425136"
    })
    void movingPointSource_radialLimit(double behindMm, double besideMm, double exact, double limit) {
        // Rosenthal, Trans ASME 1946 (from memory): dT = Q/(4 pi k R) exp(-v (R + xi)/(2 alpha)), Q 10 W, v 2.5 mm/s.
        double v = 2.5e-3;
        double alpha = K / RC;
        double xi = -behindMm * 1e-3;
        double r = besideMm * 1e-3;
        double distance = Math.hypot(xi, r);
        double moving = 10 / (4 * Math.PI * K * distance) * Math.exp(-v * (distance + xi) / (2 * alpha));
        assertEquals(exact, moving, 1e-7);
        double radial = 10 / (4 * Math.PI * K * -xi) * Math.exp(v * r * r / (4 * alpha * xi));
        assertEquals(limit, radial, 1e-7);
        // The kernel, given the same energy per length at once, follows the radial limit.
        RadialGrid grid = TestTissue.growingWall(0.01e-3, 30e-3, 1000);
        Bioheat kernel = TestTissue.started(grid, TestTissue.solid(K, RC, 0), 0);
        double flashS = 1e-6;
        run(kernel, flashS, 1, 10 / v / flashS);
        run(kernel, -xi / v, 4000, 0);
        assertEquals(limit, TestTissue.atC(kernel, r), 3e-3 * limit);
    }

    @Test
    void steadyCylinder_logarithm() {
        // T = 37 + q'/(2 pi k) ln(R/r): the shells are exact.
        RadialGrid grid = TestTissue.wall(0.9e-3, 30e-3, 200);
        Bioheat kernel = TestTissue.started(grid, TestTissue.solid(K, RC, 37), 37);
        run(kernel, STEADY_S, 1, 100);
        for (int i = 1; i < grid.cells; i++) {
            double exact = 37 + 100 / (2 * Math.PI * K) * Math.log(30e-3 / grid.centreM[i]);
            assertEquals(exact, kernel.temperatureC()[i], 1e-9);
        }
        assertEquals(131.3133874261, 37 + 100 / (2 * Math.PI * K) * Math.log(30 / 1.55), 1e-9);
    }

    @Test
    void steadyCylinder_perfused() {
        // T = 37 + q' K0(m r)/(2 pi k m a K1(m a)), w 0.005 1/s: form of Pennes, J Appl Physiol 1948;1:93 (from
        // memory).
        assertEquals(99.05329521, perfusedC(0.9e-3), 1e-7);
        assertEquals(63.35080650, perfusedC(3e-3), 1e-7);
        assertEquals(41.00446111, perfusedC(10e-3), 1e-7);
        double coarse = perfusedError(400);
        double fine = perfusedError(800);
        assertEquals(0, coarse, 1e-3);
        assertEquals(2, Math.log(coarse / fine) / Math.log(2), 0.1);
    }

    private static double perfusedError(int cells) {
        RadialGrid grid = TestTissue.growingFat(0.9e-3, 120e-3, cells);
        Bioheat kernel = TestTissue.started(grid, TestTissue.perfused(K, RC, 37, 0.005), 37);
        run(kernel, STEADY_S, 1, 100);
        int i = 0;
        while (grid.centreM[i] < 3e-3) {
            i++;
        }
        return Math.abs(kernel.temperatureC()[i] - perfusedC(grid.centreM[i]));
    }

    private static double perfusedC(double r) {
        double m = Math.sqrt(0.005 * 3.8e6 / K);
        double a = 0.9e-3;
        return 37 + 100 * besselK(0, m * r) / (2 * Math.PI * K * m * a * besselK(1, m * a));
    }

    /** Modified Bessel function of the second kind by the trapezoid rule on its integral, exact to rounding here. */
    private static double besselK(int order, double x) {
        double h = 1e-3;
        double sum = Math.exp(-x) / 2;
        for (double t = h; t < 12; t += h) {
            sum += Math.exp(-x * Math.cosh(t)) * Math.cosh(order * t);
        }
        return sum * h;
    }

    @ParameterizedTest
    @CsvSource({"10e-6, 0.005", "5e-6, 0.0025"})
    void vaporisationFront_plane(double cellM, double tolerance) {
        // Two-phase similarity solution (Neumann's problem with evaporation): front 2 lambda sqrt(alpha_dry t),
        // lambda 0.195559831700, surface 300 C, front 100 C, far 27 C: 0.52474209 mm after 10 s.
        double innerM = 1;
        int cells = (int) Math.round(6e-3 / cellM);
        RadialGrid grid = TestTissue.wall(innerM, innerM + 6e-3, cells);
        Bioheat kernel = TestTissue.started(grid, TestTissue.boiling(0.48, 3.7e6, 756, 27), 27);
        clamp(kernel, 300, 10, 4000);
        double driedMm = 0;
        for (int i = 0; i < cells; i++) {
            driedMm += (1 - kernel.wetness()[i]) * cellM * 1e3;
        }
        assertEquals(0.52474209, driedMm, tolerance * 0.52474209);
        assertTrue(kernel.book().imbalance() < 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 27, 0.2260498", "4, 27, 0.4520995", "12, 27, 0.7830594",
        "1, 37, 0.2650678", "4, 37, 0.5301356", "12, 37, 0.9182218"
    })
    void clampedPlane_isotherm(double seconds, double startC, double depthMm) {
        // Depth of the 75 C isotherm under a surface at 100 C: 2 sqrt(alpha t) erfcinv((75 - T0)/(100 - T0)),
        // alpha 0.13 mm2/s. Textbook form.
        RadialGrid grid = TestTissue.wall(1, 1 + 12e-3, 2400);
        Bioheat kernel = TestTissue.started(grid, TestTissue.solid(0.13e-6 * RC, RC, startC), startC);
        clamp(kernel, 100, seconds, 2000);
        int i = 0;
        while (kernel.temperatureC()[i + 1] >= 75) {
            i++;
        }
        double[] t = kernel.temperatureC();
        double share = (t[i] - 75) / (t[i] - t[i + 1]);
        double at = grid.centreM[i] + share * (grid.centreM[i + 1] - grid.centreM[i]) - 1;
        assertEquals(depthMm, at * 1e3, 1e-3);
    }

    @ParameterizedTest
    @CsvSource({"1, 421.526194", "4, 256.825969", "12, 183.550324", "20, 159.693947"})
    void clampedCylinder_flux(double seconds, double wPerM) {
        // Step of 73 K on a cylinder of 0.9 mm: q' = 2 pi k 73 (4/pi2) int e^(-tau u2)/(u (J0^2 + Y0^2)) du.
        RadialGrid grid = TestTissue.wall(0.9e-3, 20e-3, 1600);
        Bioheat kernel = TestTissue.started(grid, TestTissue.solid(K, RC, 27), 27);
        clamp(kernel, 100, seconds, 4000);
        assertEquals(wPerM, kernel.innerFluxWPerM(), 1e-3 * wPerM);
    }

    private static void run(Bioheat kernel, double seconds, int steps, double lineWPerM) {
        for (int i = 0; i < steps; i++) {
            kernel.rest();
            kernel.sourceWPerM()[0] = lineWPerM;
            kernel.step(seconds / steps);
        }
    }

    private static void clamp(Bioheat kernel, double surfaceC, double seconds, int steps) {
        for (int i = 0; i < steps; i++) {
            kernel.rest();
            kernel.touch(1e12, surfaceC);
            kernel.step(seconds / steps);
        }
    }
}
