package org.tunica.physics;

/**
 * How much of a wall a drug kills: {@code min(1, d/h)}.
 *
 * <p>d is the depth of kill in mm, h the wall in mm while the drug acts; the diameter enters only through h. The depths
 * are common practice without a published source.
 */
final class ChemicalKill {
    private ChemicalKill() {}

    /** Fraction of the wall killed, 0 to 1. */
    public static double wallFraction(double killDepthMm, double wallMm) {
        WallGeometry.positive("killDepthMm", killDepthMm);
        WallGeometry.positive("wallMm", wallMm);
        return Math.min(1, killDepthMm / wallMm);
    }
}
