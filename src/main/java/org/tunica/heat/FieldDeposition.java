package org.tunica.heat;

/** A microwave antenna: power density as (a/r)^n exp(-(r - a)/decay), normalised. The near field is weakly known. */
final class FieldDeposition implements Deposition {
    private final double[] share;

    FieldDeposition(RadialGrid grid, double exponent, double decayM) {
        share = new double[grid.cells];
        double antennaM = grid.faceM[0];
        double whole = 0;
        for (int i = 0; i < grid.cells; i++) {
            double r = grid.centreM[i];
            share[i] = Math.pow(antennaM / r, exponent) * Math.exp(-(r - antennaM) / decayM) * grid.volumeM2[i];
            whole += share[i];
        }
        for (int i = 0; i < grid.cells; i++) {
            share[i] /= whole;
        }
    }

    @Override
    public void deposit(double lineWPerM, Bioheat slice) {
        double[] source = slice.sourceWPerM();
        for (int i = 0; i < share.length; i++) {
            source[i] = lineWPerM * share[i];
        }
    }
}
