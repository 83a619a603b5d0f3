package org.tunica.heat;

import java.util.Arrays;

/** What fills each shell of a grid, and the temperatures it starts from and is held at. SI units, temperatures in C. */
final class Medium {
    final double[] wetConductivity;
    final double[] wetHeatCapacity;
    final double[] waterKgPerM3;
    final double[] perfusionWPerMK;
    final double[] startC;
    final double dryConductivity;
    final double dryHeatCapacity;
    final double latentJPerKg;
    final double boilingC;
    final double capC;
    final double bodyC;

    Medium(RadialGrid grid, TissueConstants tissue, double startC) {
        int n = grid.cells;
        wetConductivity = new double[n];
        wetHeatCapacity = new double[n];
        waterKgPerM3 = new double[n];
        perfusionWPerMK = new double[n];
        this.startC = new double[n];
        dryConductivity = tissue.dry().conductivityWPerMK();
        dryHeatCapacity = tissue.dry().heatCapacityJPerM3K();
        latentJPerKg = tissue.latentJPerKg();
        boilingC = tissue.boilingC();
        capC = tissue.dry().capC();
        bodyC = tissue.bodyC();
        fill(0, grid.filmCells, tissue.film(), startC);
        fill(grid.filmCells, grid.wallEnd, tissue.wall(), startC);
        fill(grid.wallEnd, grid.tumescentEnd, tissue.tumescent(), startC);
        fill(grid.tumescentEnd, n, tissue.fat(), bodyC);
        for (int i = grid.tumescentEnd; i < n; i++) {
            perfusionWPerMK[i] = tissue.perfusionPerS() * tissue.bloodJPerM3K() * grid.volumeM2[i];
        }
    }

    private void fill(int from, int to, TissueConstants.Layer layer, double temperatureC) {
        Arrays.fill(wetConductivity, from, to, layer.conductivityWPerMK());
        Arrays.fill(wetHeatCapacity, from, to, layer.heatCapacityJPerM3K());
        Arrays.fill(waterKgPerM3, from, to, layer.waterKgPerM3());
        Arrays.fill(startC, from, to, temperatureC);
    }
}
