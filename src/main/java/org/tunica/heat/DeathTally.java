package org.tunica.heat;

import java.util.Arrays;

/** Heat death, char time and peak temperatures of every shell, gathered step by step. */
final class DeathTally {
    private final RateTable necrosis;
    private final RateTable delayed;
    private final double floorC;
    private final double charC;
    private RadialGrid grid;
    private double[] omegaNecrosis = new double[0];
    private double[] omegaDelayed;
    private double[] charS;
    private double[] peakC;

    /** @param charC temperature above which dried wall chars */
    DeathTally(RateTable necrosis, RateTable delayed, double floorC, double charC) {
        this.necrosis = necrosis;
        this.delayed = delayed;
        this.floorC = floorC;
        this.charC = charC;
    }

    void begin(RadialGrid newGrid) {
        grid = newGrid;
        if (omegaNecrosis.length < grid.cells) {
            omegaNecrosis = new double[grid.cells];
            omegaDelayed = new double[grid.cells];
            charS = new double[grid.cells];
            peakC = new double[grid.cells];
        }
        Arrays.fill(omegaNecrosis, 0);
        Arrays.fill(omegaDelayed, 0);
        Arrays.fill(charS, 0);
        Arrays.fill(peakC, Double.NEGATIVE_INFINITY);
    }

    /** Counts one step; the rate is that of the mean of the temperatures at its two ends. */
    void after(double stepS, Bioheat slice) {
        double[] before = slice.beforeC();
        double[] now = slice.temperatureC();
        for (int i = 0; i < grid.cells; i++) {
            double mean = (before[i] + now[i]) / 2;
            if (mean >= floorC) {
                omegaNecrosis[i] += stepS * necrosis.perS(mean);
                omegaDelayed[i] += stepS * delayed.perS(mean);
                if (now[i] > charC) {
                    charS[i] += stepS;
                }
            }
            peakC[i] = Math.max(peakC[i], now[i]);
        }
    }

    double necrosisDepthM() {
        return depthM(omegaNecrosis);
    }

    double delayedDepthM() {
        return depthM(omegaDelayed);
    }

    /** Distance from the inner face of the wall to the outermost place where Omega is 1. */
    private double depthM(double[] omega) {
        int last = grid.cells - 1;
        while (last >= grid.filmCells && omega[last] < 1) {
            last--;
        }
        if (last < grid.filmCells) {
            return 0;
        }
        double inner = Math.log(omega[last]);
        double outer = Math.log(Math.max(omega[last + 1], Double.MIN_NORMAL));
        double step = grid.centreM[last + 1] - grid.centreM[last];
        return grid.centreM[last] + step * inner / (inner - outer) - grid.faceM[grid.filmCells];
    }

    /** Thickness of wall above the char temperature for longer than the given time. */
    double charredM(double longerThanS) {
        double charred = 0;
        for (int i = grid.filmCells; i < grid.wallEnd; i++) {
            charred += charS[i] > longerThanS ? grid.widthM[i] : 0;
        }
        return charred;
    }

    double innerWallPeakC() {
        return peakC[grid.filmCells];
    }

    double outerWallPeakC() {
        return peakC[grid.wallEnd - 1];
    }

    double[] omegaNecrosis() {
        return omegaNecrosis;
    }

    double[] omegaDelayed() {
        return omegaDelayed;
    }

    double[] peakC() {
        return peakC;
    }
}
