package org.tunica.treatment;

/**
 * Cycles of a heating element that is moved stretch by stretch; the last stretch overlaps where it does not fit.
 *
 * @param elementCm length of the element, cm
 * @param firstStretch cycles on the stretch next to the junction
 * @param perStretch cycles on every other stretch
 */
public record SegmentalCycles(double elementCm, int firstStretch, int perStretch) {
    public SegmentalCycles {
        Checked.positive("elementCm", elementCm);
        Checked.positive("firstStretch", firstStretch);
        Checked.positive("perStretch", perStretch);
    }

    /** Stretches needed for a length. */
    public int stretches(double lengthCm) {
        Checked.positive("lengthCm", lengthCm);
        return (int) Math.ceil(lengthCm / elementCm);
    }

    /** Cycles needed for a length. */
    public int cycles(double lengthCm) {
        return firstStretch + (stretches(lengthCm) - 1) * perStretch;
    }

    /** Heating time for a length, s. */
    public double seconds(double lengthCm, double cycleS) {
        Checked.positive("cycleS", cycleS);
        return cycles(lengthCm) * cycleS;
    }
}
