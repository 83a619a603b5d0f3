package org.tunica.heat;

/**
 * How warm a nerve or the skin gets. The vein's surroundings are taken as concentric and without a heat sink of vessels.
 *
 * @param gapMm distance from the outer face of the wall
 * @param peakC highest temperature
 * @param cem43Min thermal dose in equivalent minutes at 43 C; above about 50 C an extrapolation, read it with the peak
 */
public record WarmedPoint(double gapMm, double peakC, double cem43Min) {
    /** The worse of two readings at the same place. */
    WarmedPoint worse(WarmedPoint other) {
        return new WarmedPoint(gapMm, Math.max(peakC, other.peakC), Math.max(cem43Min, other.cem43Min));
    }
}
