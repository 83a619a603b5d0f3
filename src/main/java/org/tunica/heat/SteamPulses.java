package org.tunica.heat;

/**
 * Pulses of steam that condense on the inner face and never heat it above boiling. Pulse timing is a guess.
 *
 * @param pulses pulses a slice sees while its zone is treated
 * @param pulseS length of one
 * @param pauseS time between two
 * @param lineWPerM heat offered to one metre of vein while a pulse lasts
 * @param contactWPerM2K heat transfer coefficient of condensing steam
 */
record SteamPulses(int pulses, double pulseS, double pauseS, double lineWPerM, double contactWPerM2K)
        implements HeatSupply {
    private static final int STEPS_PER_PULSE = 120;

    @Override
    public double durationS() {
        return pulses * (pulseS + pauseS);
    }

    @Override
    public int steps() {
        return STEPS_PER_PULSE * pulses;
    }

    @Override
    public void heat(double middleS, Bioheat slice) {
        if (middleS % (pulseS + pauseS) < pulseS) {
            slice.condense(lineWPerM, contactWPerM2K);
        }
    }
}
