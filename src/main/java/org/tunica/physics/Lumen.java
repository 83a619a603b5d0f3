package org.tunica.physics;

/** Volume and posture of the lumen. Closed forms. */
final class Lumen {
    private Lumen() {}

    /** Volume in mL of a lumen of {@code diameterMm} over {@code lengthCm}: pi/4 D^2 L. */
    public static double volumeMl(double diameterMm, double lengthCm) {
        WallGeometry.positive("diameterMm", diameterMm);
        WallGeometry.positive("lengthCm", lengthCm);
        return Math.PI / 4 * diameterMm * diameterMm * lengthCm * 10 / 1000;
    }

    /** Fall of the diameter from standing to lying, in per cent of the standing one. */
    public static double posturalChangePercent(double standingMm, double lyingMm) {
        WallGeometry.positive("standingMm", standingMm);
        WallGeometry.positive("lyingMm", lyingMm);
        return 100 * (standingMm - lyingMm) / standingMm;
    }

    /** Standing diameter in mm that belongs to a lying one, for a postural change in per cent. */
    public static double standingMm(double lyingMm, double posturalChangePercent) {
        WallGeometry.positive("lyingMm", lyingMm);
        if (!(posturalChangePercent >= 0 && posturalChangePercent < 100)) {
            throw new IllegalArgumentException("posturalChangePercent must be in 0..100, got " + posturalChangePercent);
        }
        return lyingMm / (1 - posturalChangePercent / 100);
    }
}
