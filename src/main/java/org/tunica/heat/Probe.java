package org.tunica.heat;

/** Temperature and thermal dose at one distance from the axis, on a straight line between shell centres. */
final class Probe {
    private final int inner;
    private final double share;
    private final ThermalDose dose;
    private double peakC = Double.NEGATIVE_INFINITY;
    private double cem43Min;

    /** @param radiusM distance from the axis; beyond the outer radius the slice stays at body temperature */
    Probe(RadialGrid grid, double radiusM, ThermalDose dose) {
        this.dose = dose;
        int last = grid.cells - 1;
        if (radiusM >= grid.centreM[last]) {
            inner = last;
            double outerM = grid.faceM[grid.cells];
            share = Math.min(1, (radiusM - grid.centreM[last]) / (outerM - grid.centreM[last]));
        } else {
            int i = 0;
            while (grid.centreM[i + 1] < radiusM) {
                i++;
            }
            inner = i;
            share = (radiusM - grid.centreM[i]) / (grid.centreM[i + 1] - grid.centreM[i]);
        }
    }

    /** Looks at the slice without counting time. */
    void look(Bioheat slice) {
        peakC = Math.max(peakC, readC(slice));
    }

    /** Looks at the slice after a step. */
    void after(double stepS, Bioheat slice) {
        double nowC = readC(slice);
        peakC = Math.max(peakC, nowC);
        cem43Min += dose.minutes(nowC, stepS);
    }

    private double readC(Bioheat slice) {
        double here = slice.temperatureC()[inner];
        double next = inner == slice.cells() - 1 ? slice.bodyC() : slice.temperatureC()[inner + 1];
        return here + share * (next - here);
    }

    WarmedPoint result(double gapMm) {
        return new WarmedPoint(gapMm, peakC, cem43Min);
    }
}
