package org.tunica.heat;

/**
 * An element that holds its temperature in contact with the slice, on for one cycle, off for a gap, and again. The
 * slice must lie away from the ends of the element (about 3 mm), where heat escapes along the vein.
 *
 * @param holdS time at temperature in one cycle
 * @param rampS time to switch on, and again to switch off
 * @param gapS pause after a cycle
 * @param elementC temperature held
 * @param contactWPerM2K heat transfer coefficient between element and film
 */
record ContactCycles(int cycles, double holdS, double rampS, double gapS, double elementC, double contactWPerM2K)
        implements HeatSupply {
    private static final int STEPS_PER_CYCLE = 200;

    @Override
    public double durationS() {
        return cycles * (onS() + gapS);
    }

    private double onS() {
        return holdS + 2 * rampS;
    }

    @Override
    public int steps() {
        return STEPS_PER_CYCLE * cycles;
    }

    @Override
    public void heat(double middleS, Bioheat slice) {
        double phaseS = middleS % (onS() + gapS);
        double switched = Math.min(1, Math.min(phaseS, onS() - phaseS) / rampS);
        if (switched > 0) {
            slice.touch(switched * contactWPerM2K, elementC);
        }
    }
}
