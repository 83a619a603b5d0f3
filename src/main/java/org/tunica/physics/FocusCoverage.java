package org.tunica.physics;

/**
 * What a row of focused-ultrasound lesions covers. Each lesion is an ellipsoid of {@code widthMm} across and {@code
 * heightMm} along the beam; lesions {@code spacingMm} apart along the vein leave a common width of sqrt(width^2 -
 * spacing^2). The wall is reached from both faces, so whole-wall kill is a matter of geometry: the vein pressed flat must
 * fit into that width and into the height.
 */
record FocusCoverage(double widthMm, double heightMm, double spacingMm) {
    public FocusCoverage {
        WallGeometry.positive("widthMm", widthMm);
        WallGeometry.positive("heightMm", heightMm);
        WallGeometry.positive("spacingMm", spacingMm);
        if (spacingMm >= widthMm) {
            throw new IllegalArgumentException("spacingMm must be under widthMm " + widthMm + ", got " + spacingMm);
        }
    }

    /** Width in mm that every cross-section of the row has in common. */
    public double commonWidthMm() {
        return Math.sqrt(widthMm * widthMm - spacingMm * spacingMm);
    }

    /** Share of a vein of this collapsed outer diameter that one row covers, 0 to 1. */
    public double share(double collapsedOuterDiameterMm) {
        WallGeometry.positive("collapsedOuterDiameterMm", collapsedOuterDiameterMm);
        return Math.min(1, Math.min(commonWidthMm(), heightMm) / collapsedOuterDiameterMm);
    }

    /** Lesions in one row over a length, ends included. */
    public int lesions(double lengthCm) {
        WallGeometry.positive("lengthCm", lengthCm);
        return (int) Math.ceil(lengthCm * 10 / spacingMm) + 1;
    }
}
