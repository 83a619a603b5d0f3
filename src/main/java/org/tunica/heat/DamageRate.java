package org.tunica.heat;

/**
 * First-order rate of heat death: rate = A exp(-E / (R T)) in 1/s, T in K. Death is Omega = integral of the rate = 1.
 *
 * <p>Form: Arrhenius; constants from knowledge/. Valid for exposures of about 0.1 to 100 s, beyond that it
 * extrapolates.
 */
final class DamageRate {
    /** Exact value of the molar gas constant in the SI of 2019. */
    static final double GAS_J_PER_MOL_K = 8.314462618;

    static final double ZERO_C_IN_K = 273.15;

    private final double lnFrequency;
    private final double activationK;

    /**
     * @param frequencyPerS A
     * @param activationJPerMol E
     */
    DamageRate(double frequencyPerS, double activationJPerMol) {
        lnFrequency = Math.log(Checks.positive("frequencyPerS", frequencyPerS));
        activationK = Checks.positive("activationJPerMol", activationJPerMol) / GAS_J_PER_MOL_K;
    }

    double lnFrequency() {
        return lnFrequency;
    }

    double perS(double temperatureC) {
        return Math.exp(lnFrequency - activationK / (temperatureC + ZERO_C_IN_K));
    }

    /** The steady temperature that kills in the given time. */
    double lethalC(double seconds) {
        return activationK / (lnFrequency + Math.log(seconds)) - ZERO_C_IN_K;
    }
}
