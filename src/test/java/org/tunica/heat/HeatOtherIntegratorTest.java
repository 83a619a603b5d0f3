package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

/**
 * Bipolar RF 18 W x 1 s/cm by a general-purpose integrator: own grid, own source, water boiling off at a finite rate of
 * 5000 1/s instead of an active set. Only the constants are shared, by their ids.
 */
class HeatOtherIntegratorTest {
    private static final double WALL = 0.65e-3;

    @Test
    void bipolarRf() {
        Lines lines = new Lines(18, 1);
        double[] end = new DormandPrince54Integrator(1e-9, 0.05, 1e-7, 1e-7)
                .integrate(lines, new ODEState(0, lines.start()), lines.offS + 12)
                .getPrimaryState();
        HeatModel fine = HeatModel.of(HeatKnowledge.constants(), new Fineness(0.125, 4, 52, 1.06, 0));
        HeatRun ours = fine.run(new HeatSetting.Pulled("rf-bipolar-pullback", 18, 1), VeinSlice.of(0.65, 8, 27));
        assertEquals(lines.depthMm(end, 2), ours.killDepthMm(), 0.002);
        assertEquals(lines.depthMm(end, 3), ours.delayedDepthMm(), 0.002);
        assertEquals(lines.dryMm(end), ours.dryDepthMm(), 0.001);
        assertEquals(0.302, ours.killDepthMm(), 0.002);
    }

    /** Temperatures, water shares and two damage integrals of every shell, one after the other. */
    private static final class Lines implements OrdinaryDifferentialEquation {
        private static final double EVAPORATION_PER_S = 5000;
        final double offS;
        private final double speed;
        private final double lineW;
        private final double wallIn = mm("heat.rf-bipolar.radius") + mm("heat.rf-bipolar.film");
        private final double[] face = faces();
        private final int n = face.length - 1;

        Lines(double powerW, double pullback) {
            speed = 0.01 / pullback;
            lineW = powerW * v("heat.rf-bipolar.efficiency");
            offS = (mm("heat.rf-bipolar.length") + 6 * mm("heat.rf-bipolar.spread")) / speed;
        }

        private static double v(String id) {
            return HeatKnowledge.value(id);
        }

        private static double mm(String id) {
            return v(id) * 1e-3;
        }

        /** 10 um through film and wall, then growing by a twelfth up to 12 mm; the fat beyond is not reached in time. */
        private double[] faces() {
            double[] at = new double[400];
            int count = 0;
            double r = mm("heat.rf-bipolar.radius");
            double width = 10e-6;
            while (r < 12e-3) {
                at[count++] = r;
                width = r > wallIn + WALL + 0.1e-3 ? width * 13 / 12 : 10e-6;
                r += width;
            }
            return Arrays.copyOf(at, count);
        }

        private double centre(int i) {
            return (face[i] + face[i + 1]) / 2;
        }

        private String layer(int i) {
            double x = centre(i) - wallIn;
            return x < 0 ? "film" : x < WALL ? "wall" : "tumescent";
        }

        double[] start() {
            double[] y = new double[4 * n];
            Arrays.fill(y, 0, n, 27);
            Arrays.fill(y, n, 2 * n, 1);
            return y;
        }

        @Override
        public int getDimension() {
            return 4 * n;
        }

        private final double[] kWet = all("conductivity");
        private final double[] cWet = all("heat-capacity");
        private final double[] water = all("water");

        private double[] all(String what) {
            double[] values = new double[n];
            for (int i = 0; i < n; i++) {
                values[i] = v("tissue." + layer(i) + "." + what);
            }
            return values;
        }

        private final double kDry = v("tissue.dry.conductivity");
        private final double cDry = v("tissue.dry.heat-capacity");
        private final double latent = v("tissue.water.latent-heat");
        private final double depth = mm("heat.rf-bipolar.deposition-depth");
        private final double edge = mm("heat.rf-bipolar.edge-depth");
        private final double edgeShare = v("heat.rf-bipolar.edge-share");
        private final double rollOff = mm("heat.rf-bipolar.roll-off");
        private final double halfLength = mm("heat.rf-bipolar.length") / 2;
        private final double spread = mm("heat.rf-bipolar.spread");
        private final double lnA = Math.log(v("tissue.necrosis.frequency"));
        private final double e = v("tissue.necrosis.activation") / 8.314462618;
        private final double lnB = Math.log(v("tissue.delayed.frequency"));
        private final double g = v("tissue.delayed.activation") / 8.314462618;

        @Override
        public double[] computeDerivatives(double t, double[] y) {
            double[] d = new double[4 * n];
            double line = lineNow(t, y);
            double in = 0;
            for (int i = 0; i < n; i++) {
                double out = flux(i, y);
                double x = centre(i) - face[0];
                double density =
                        (1 - edgeShare) * Math.exp(-x / depth) / depth + edgeShare * Math.exp(-x / edge) / edge;
                double width = face[i + 1] - face[i];
                double gained = in - out + line * density * width;
                double f = y[n + i];
                double heatCapacity = cDry + f * (cWet[i] - cDry);
                double above = Math.max(0, y[i] - 100) * Math.min(1, Math.max(0, f) * 200);
                d[i] = gained / (heatCapacity * 2 * Math.PI * centre(i) * width) - EVAPORATION_PER_S * above;
                d[n + i] = -heatCapacity * EVAPORATION_PER_S * above / (latent * water[i]);
                if (y[i] > 42) {
                    d[2 * n + i] = Math.exp(lnA - e / (y[i] + 273.15));
                    d[3 * n + i] = Math.exp(lnB - g / (y[i] + 273.15));
                }
                in = out;
            }
            return d;
        }

        private double lineNow(double t, double[] y) {
            if (t > offS) {
                return 0;
            }
            double z = speed * t - halfLength - 3 * spread;
            double unit = spread * Math.sqrt(2);
            double shape = (Erf.erf((z + halfLength) / unit) - Erf.erf((z - halfLength) / unit)) / (4 * halfLength);
            double dried = 0;
            for (int i = 0; i < n && centre(i) < wallIn + WALL; i++) {
                dried += (1 - y[n + i]) * (face[i + 1] - face[i]);
            }
            return lineW * shape / (1 + dried / rollOff);
        }

        private double flux(int i, double[] y) {
            if (i == n - 1) {
                return 0;
            }
            double here = kDry + y[n + i] * (kWet[i] - kDry);
            double next = kDry + y[n + i + 1] * (kWet[i + 1] - kDry);
            double resistance = (face[i + 1] - centre(i)) / here + (centre(i + 1) - face[i + 1]) / next;
            return 2 * Math.PI * face[i + 1] * (y[i] - y[i + 1]) / resistance;
        }

        double depthMm(double[] y, int block) {
            int i = n - 1;
            while (y[block * n + i] < 1) {
                i--;
            }
            double a = Math.log(y[block * n + i]);
            double b = Math.log(y[block * n + i + 1]);
            return (centre(i) + (centre(i + 1) - centre(i)) * a / (a - b) - wallIn) * 1e3;
        }

        double dryMm(double[] y) {
            double dried = 0;
            for (int i = 0; i < n; i++) {
                dried += layer(i).equals("wall") ? (1 - y[n + i]) * (face[i + 1] - face[i]) * 1e3 : 0;
            }
            return dried;
        }
    }
}
