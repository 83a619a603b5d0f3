package org.tunica.physics;

/**
 * Foam made of one part of liquid and {@code gasParts} parts of gas.
 *
 * @param foamMl volume of the foam
 * @param percent strength of the liquid, grams in 100 mL (1 % = 10 mg/mL)
 * @param gasParts parts of gas to one part of liquid
 */
record FoamMix(double foamMl, double percent, double gasParts) {
    public FoamMix {
        WallGeometry.positive("foamMl", foamMl);
        WallGeometry.positive("percent", percent);
        WallGeometry.positive("gasParts", gasParts);
    }

    /** Liquid in mL. */
    public double liquidMl() {
        return foamMl / (1 + gasParts);
    }

    /** Gas in mL. */
    public double gasMl() {
        return foamMl - liquidMl();
    }

    /** Drug in mg. */
    public double drugMg() {
        return Doses.liquidMg(liquidMl(), percent);
    }
}
