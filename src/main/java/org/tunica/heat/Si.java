package org.tunica.heat;

/** Exact conversions from the units of the clinic. */
final class Si {
    private Si() {}

    static double m(double mm) {
        return mm * 1e-3;
    }

    static double mm(double m) {
        return m * 1e3;
    }

    /** Attenuation per mm to per m. */
    static double perM(double perMm) {
        return perMm * 1e3;
    }

    /** Absorption per cm to per mm. */
    static double perMm(double perCm) {
        return perCm / 10;
    }

    /** Pull-back time on one centimetre to speed. */
    static double mPerS(double sPerCm) {
        return 0.01 / sPerCm;
    }
}
