package org.tunica.heat;

/**
 * Bipolar electrodes: two decaying exponentials of the distance from the electrode, each normalised, and a local
 * impedance that takes less power as the tissue dries,
 *
 * <pre>taken = q / (1 + dried / rollOff),  dried = sum of (1 - f) dr over film and wall</pre>
 *
 * The part not taken is booked as not delivered; a generator that forces its power would char more. Shape and numbers
 * are calibrated on bench facts of common practice.
 */
final class ElectrodeDeposition implements Deposition {
    private final double[] share;
    private final double rollOffM;

    ElectrodeDeposition(RadialGrid grid, double depthM, double edgeDepthM, double edgeShare, double rollOffM) {
        share = new double[grid.cells];
        addDecay(grid, depthM, 1 - edgeShare);
        addDecay(grid, edgeDepthM, edgeShare);
        this.rollOffM = rollOffM;
    }

    private void addDecay(RadialGrid grid, double depthM, double weight) {
        double deviceM = grid.faceM[0];
        double whole = 1 - Math.exp(-(grid.faceM[grid.cells] - deviceM) / depthM);
        for (int i = 0; i < grid.cells; i++) {
            double in = Math.exp(-(grid.faceM[i] - deviceM) / depthM);
            double out = Math.exp(-(grid.faceM[i + 1] - deviceM) / depthM);
            share[i] += weight * (in - out) / whole;
        }
    }

    @Override
    public void deposit(double lineWPerM, Bioheat slice) {
        double taken = lineWPerM / (1 + driedM(slice) / rollOffM);
        double[] source = slice.sourceWPerM();
        for (int i = 0; i < share.length; i++) {
            source[i] = taken * share[i];
        }
        slice.undelivered(lineWPerM - taken);
    }

    private static double driedM(Bioheat slice) {
        double[] wetness = slice.wetness();
        RadialGrid grid = slice.grid();
        double dried = 0;
        for (int i = 0; i < grid.wallEnd; i++) {
            dried += (1 - wetness[i]) * grid.widthM[i];
        }
        return dried;
    }
}
