package org.tunica.heat;

/**
 * How far the measurements of a slice may be off, as standard deviations; 0 takes a measurement as exact.
 *
 * @param wallSdMm of the wall thickness on the device
 * @param tumescentSdMm of the tumescent layer
 * @param nerveGapSdMm of the gap to the nerve
 * @param skinGapSdMm of the gap to the skin
 */
public record MeasurementSpread(double wallSdMm, double tumescentSdMm, double nerveGapSdMm, double skinGapSdMm) {
    /** Every measurement taken as exact. */
    public static final MeasurementSpread NONE = new MeasurementSpread(0, 0, 0, 0);

    public MeasurementSpread {
        Checks.notNegative("wallSdMm", wallSdMm);
        Checks.notNegative("tumescentSdMm", tumescentSdMm);
        Checks.notNegative("nerveGapSdMm", nerveGapSdMm);
        Checks.notNegative("skinGapSdMm", skinGapSdMm);
    }
}
