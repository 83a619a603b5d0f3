package org.tunica.physics;

/**
 * How thick one and the same vein wall is in its different states.
 *
 * <p>The wall is incompressible and keeps its length, so its cross-section area A is kept: A = pi h (D - h) with outer
 * diameter D and thickness h, both measured in the same state. Source: geometry; that emptying and tumescence wrap the
 * wall around the device is common practice, no source.
 */
public final class WrappedWall {
    private final double areaMm2;

    private WrappedWall(double areaMm2) {
        this.areaMm2 = areaMm2;
    }

    /**
     * A wall as measured.
     *
     * @param outerDiameterMm outer diameter in the state measured
     * @param thicknessMm wall thickness in the same state, below half the diameter
     * @throws IllegalArgumentException for anything else
     */
    public static WrappedWall measured(double outerDiameterMm, double thicknessMm) {
        Checks.positive("outerDiameterMm", outerDiameterMm);
        Checks.positive("thicknessMm", thicknessMm);
        if (2 * thicknessMm >= outerDiameterMm) {
            throw new IllegalArgumentException(
                    "thicknessMm must be below half the outerDiameterMm " + outerDiameterMm + ", got " + thicknessMm);
        }
        return new WrappedWall(Math.PI * thicknessMm * (outerDiameterMm - thicknessMm));
    }

    /** Cross-section area of the wall, mm2. */
    public double areaMm2() {
        return areaMm2;
    }

    /**
     * Thickness when wrapped around a core.
     *
     * @param innerRadiusMm device radius plus fluid film
     */
    public double thicknessOnRadiusMm(double innerRadiusMm) {
        double radius = Checks.positive("innerRadiusMm", innerRadiusMm);
        return Math.sqrt(radius * radius + areaMm2 / Math.PI) - radius;
    }

    /**
     * Thickness when the vein has another outer diameter, for example relaxed after spasm.
     *
     * @throws IllegalArgumentException when the wall does not fit into that diameter
     */
    public double thicknessAtDiameterMm(double outerDiameterMm) {
        double lumen = outerDiameterMm * outerDiameterMm - 4 * areaMm2 / Math.PI;
        if (!(outerDiameterMm > 0 && lumen >= 0)) {
            throw new IllegalArgumentException(
                    "outerDiameterMm must hold a wall of " + areaMm2 + " mm2, got " + outerDiameterMm);
        }
        return (outerDiameterMm - Math.sqrt(lumen)) / 2;
    }
}
