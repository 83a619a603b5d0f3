package org.tunica.physics;

/**
 * The cross-section of a vein wall, which keeps its area when the vein contracts or is wrapped on a device.
 *
 * <pre>
 *   A   = pi t (D + t)                 area [mm2] from lumen D [mm] and wall t [mm], any state
 *   t_D = (sqrt(D^2 + 4 A/pi) - D)/2   wall at another lumen D
 *   t_r = sqrt(r^2 + A/pi) - r         wall wrapped on a radius r (device and fluid film)
 * </pre>
 *
 * <p>Assumes an incompressible wall and no change of length. Lumen, wall and radius must be in the same state and the
 * wall must be the whole wall: intima-media thickness does not mix with it. Closed form, no source needed.
 *
 * @param areaMm2 area of the wall
 */
public record WallGeometry(double areaMm2) {
    public WallGeometry {
        positive("areaMm2", areaMm2);
    }

    /**
     * From lumen and wall measured in one state.
     *
     * @throws IllegalArgumentException when either is not a positive number
     */
    public static WallGeometry ofLumen(double lumenMm, double wallMm) {
        positive("lumenMm", lumenMm);
        positive("wallMm", wallMm);
        return new WallGeometry(Math.PI * wallMm * (lumenMm + wallMm));
    }

    /**
     * From outer diameter and wall measured in one state.
     *
     * @throws IllegalArgumentException when the wall does not fit into the outer diameter
     */
    public static WallGeometry ofOuterDiameter(double outerMm, double wallMm) {
        return ofLumen(outerMm - 2 * wallMm, wallMm);
    }

    /** Wall thickness in mm when the lumen is {@code lumenMm} wide. */
    public double wallAtLumenMm(double lumenMm) {
        positive("lumenMm", lumenMm);
        return (Math.sqrt(lumenMm * lumenMm + 4 * areaMm2 / Math.PI) - lumenMm) / 2;
    }

    /** Wall thickness in mm when the outer diameter is {@code outerMm}. */
    public double wallAtOuterDiameterMm(double outerMm) {
        double inner2 = outerMm * outerMm - 4 * areaMm2 / Math.PI;
        if (!(inner2 >= 0)) {
            throw new IllegalArgumentException(
                    "outerMm must be at least " + collapsedOuterDiameterMm() + " for this wall, got " + outerMm);
        }
        return (outerMm - Math.sqrt(inner2)) / 2;
    }

    /** Wall thickness in mm when the wall wraps a radius of {@code radiusMm}. */
    public double wallOnRadiusMm(double radiusMm) {
        positive("radiusMm", radiusMm);
        return Math.sqrt(radiusMm * radiusMm + areaMm2 / Math.PI) - radiusMm;
    }

    /** Outer diameter in mm of the vein with its lumen pressed shut. */
    public double collapsedOuterDiameterMm() {
        return 2 * Math.sqrt(areaMm2 / Math.PI);
    }

    /** Volume of the wall in mL over a length. */
    public double wallVolumeMl(double lengthCm) {
        positive("lengthCm", lengthCm);
        return areaMm2 * lengthCm * 10 / 1000;
    }

    static void positive(String name, double value) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a positive finite number, got " + value);
        }
    }
}
