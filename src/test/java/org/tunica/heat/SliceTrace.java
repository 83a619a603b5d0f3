package org.tunica.heat;

import java.util.OptionalDouble;

/** A run of the kernel that keeps temperature profiles at asked times; no steam of the laser. */
final class SliceTrace {
    final RadialGrid grid;
    final double[][] atC;
    final Bioheat kernel = new Bioheat();
    final DeathTally tally;

    SliceTrace(HeatConstants constants, HeatSetting setting, double wallMm, Fineness fine, double[] timesS) {
        HeatDevice device = constants.device(setting.deviceId());
        TissueConstants tissue = constants.tissue();
        grid = RadialGrid.of(device.radiusMm(), device.filmMm(), wallMm, 8, tissue.outerRadiusMm(), fine);
        RateTables rates = new RateTables(tissue);
        tally = new DeathTally(
                rates.necrosis(),
                rates.delayed(),
                tissue.damageFloorC(),
                constants.laser().charC());
        atC = new double[timesS.length][];
        HeatSupply supply = device.supply(setting, grid, new HeatDevice.SliceOptics(OptionalDouble.empty(), 1, 0));
        run(supply, new Medium(grid, tissue, 27), fine, timesS);
    }

    private void run(HeatSupply supply, Medium medium, Fineness fine, double[] timesS) {
        kernel.begin(grid, medium);
        tally.begin(grid);
        TimeSteps steps = new TimeSteps(supply, fine.stepFactor());
        while (steps.more()) {
            double stepS = steps.lengthS();
            kernel.rest();
            if (steps.sourceOn()) {
                supply.heat(steps.reachedS() + stepS / 2, kernel);
            }
            kernel.step(stepS);
            tally.after(stepS, kernel);
            for (int k = 0; k < timesS.length; k++) {
                double share = (timesS[k] - steps.reachedS()) / stepS;
                if (atC[k] == null && share <= 1 + 1e-9) {
                    atC[k] = between(share);
                }
            }
            steps.advance(stepS);
        }
    }

    private double[] between(double share) {
        double[] profile = new double[grid.cells];
        for (int i = 0; i < profile.length; i++) {
            profile[i] = kernel.beforeC()[i] + share * (kernel.temperatureC()[i] - kernel.beforeC()[i]);
        }
        return profile;
    }

    /** A shell value on a straight line between centres. */
    double at(double[] values, double radiusMm) {
        double r = radiusMm * 1e-3;
        int i = 0;
        while (i < grid.cells - 2 && grid.centreM[i + 1] < r) {
            i++;
        }
        double share = (r - grid.centreM[i]) / (grid.centreM[i + 1] - grid.centreM[i]);
        return values[i] + share * (values[i + 1] - values[i]);
    }
}
