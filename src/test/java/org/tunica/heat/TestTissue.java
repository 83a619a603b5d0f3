package org.tunica.heat;

/** One made-up material for checks against closed forms. */
final class TestTissue {
    private static final double NEVER = 1e12;

    private TestTissue() {}

    /** A material that neither boils nor has a cap. */
    static TissueConstants solid(double conductivity, double heatCapacity, double bodyC) {
        return of(new TissueConstants.Layer(conductivity, heatCapacity, 1), NEVER, bodyC, 0);
    }

    static TissueConstants perfused(double conductivity, double heatCapacity, double bodyC, double perfusionPerS) {
        return of(new TissueConstants.Layer(conductivity, heatCapacity, 1), NEVER, bodyC, perfusionPerS);
    }

    static TissueConstants boiling(double conductivity, double heatCapacity, double water, double bodyC) {
        return of(new TissueConstants.Layer(conductivity, heatCapacity, water), 100, bodyC, 0);
    }

    private static TissueConstants of(
            TissueConstants.Layer layer, double boilingC, double bodyC, double perfusionPerS) {
        DamageRate none = new DamageRate(1, 1e6);
        return new TissueConstants(
                layer,
                layer,
                layer,
                layer,
                new TissueConstants.Dry(0.18, 1.0e6, NEVER),
                perfusionPerS,
                3.8e6,
                2.257e6,
                boilingC,
                bodyC,
                bodyC,
                8,
                30,
                none,
                none,
                42,
                new ThermalDose(43, 0.5, 0.25, 39),
                0.1,
                0.6);
    }

    /** Even shells of wall. */
    static RadialGrid wall(double innerM, double outerM, int cells) {
        return new RadialGrid(even(innerM, outerM, cells), 0, cells, cells);
    }

    /** Shells of wall, each a fixed factor wider than the one inside it. */
    static RadialGrid growingWall(double innerM, double outerM, int cells) {
        return new RadialGrid(growing(innerM, outerM, cells), 0, cells, cells);
    }

    /** Shells of fat, each a fixed factor wider than the one inside it. */
    static RadialGrid growingFat(double innerM, double outerM, int cells) {
        return new RadialGrid(growing(innerM, outerM, cells), 0, 0, 0);
    }

    private static double[] growing(double innerM, double outerM, int cells) {
        double[] faces = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            faces[i] = innerM * Math.pow(outerM / innerM, (double) i / cells);
        }
        return faces;
    }

    private static double[] even(double innerM, double outerM, int cells) {
        double[] faces = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            faces[i] = innerM + (outerM - innerM) * i / cells;
        }
        return faces;
    }

    static Bioheat started(RadialGrid grid, TissueConstants tissue, double startC) {
        Bioheat kernel = new Bioheat();
        kernel.begin(grid, new Medium(grid, tissue, startC));
        return kernel;
    }

    /** Temperature on a straight line between shell centres. */
    static double atC(Bioheat kernel, double radiusM) {
        double[] centre = kernel.grid().centreM;
        int i = 0;
        while (i < kernel.cells() - 2 && centre[i + 1] < radiusM) {
            i++;
        }
        double share = (radiusM - centre[i]) / (centre[i + 1] - centre[i]);
        double[] t = kernel.temperatureC();
        return t[i] + share * (t[i + 1] - t[i]);
    }
}
