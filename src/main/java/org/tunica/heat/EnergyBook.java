package org.tunica.heat;

/**
 * Where the energy of one centimetre of vein went, J/cm. What goes in equals what comes out.
 *
 * @param sourceJPerCm delivered by the device
 * @param condensedJPerCm given back by condensing steam; with a laser it is energy going round, not to be added to the
 *     energy delivered
 * @param steamJPerCm latent heat carried away by vapour
 * @param steamSensibleJPerCm warmth carried away by vapour
 * @param removedJPerCm heat of tissue above the temperature at which it counts as removed
 * @param outflowJPerCm conducted away far from the vein
 * @param perfusionJPerCm taken up by blood
 * @param storedJPerCm warming of the tissue
 * @param undeliveredJPerCm asked of the device but not taken by the dried tissue; not part of the balance
 */
public record EnergyBook(
        double sourceJPerCm,
        double condensedJPerCm,
        double steamJPerCm,
        double steamSensibleJPerCm,
        double removedJPerCm,
        double outflowJPerCm,
        double perfusionJPerCm,
        double storedJPerCm,
        double undeliveredJPerCm) {

    /** What is unaccounted for, as a share of what went in. */
    public double imbalance() {
        double in = sourceJPerCm + condensedJPerCm;
        double out = steamJPerCm + steamSensibleJPerCm + removedJPerCm + outflowJPerCm + perfusionJPerCm + storedJPerCm;
        return Math.abs(in - out) / in;
    }
}
