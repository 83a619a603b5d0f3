package org.tunica.treatment;

/**
 * Energy delivered to each centimetre of vein. Alone it says little: power and pull-back belong to it (S-0027).
 *
 * @param jPerCm J/cm
 */
public record LinearEnergy(double jPerCm) {
    private static final double MM_PER_CM = 10;

    public LinearEnergy {
        Checked.positive("jPerCm", jPerCm);
    }

    /** The linear energy of a fluence in J/cm2 on the inner face of a lumen: fluence times its circumference. */
    public static LinearEnergy ofFluence(double fluenceJPerCm2, double lumenMm) {
        Checked.positive("fluenceJPerCm2", fluenceJPerCm2);
        return new LinearEnergy(fluenceJPerCm2 * circumferenceCm(lumenMm));
    }

    /** Time spent on each centimetre at a power, s/cm. */
    public double secondsPerCm(double powerW) {
        Checked.positive("powerW", powerW);
        return jPerCm / powerW;
    }

    /** Speed of the pull-back at a power, mm/s. */
    public double pullbackMmPerS(double powerW) {
        return MM_PER_CM / secondsPerCm(powerW);
    }

    /** Time over a length at a power, s. */
    public double seconds(double lengthCm, double powerW) {
        Checked.positive("lengthCm", lengthCm);
        return lengthCm * secondsPerCm(powerW);
    }

    /** Energy over a length, J. */
    public double totalJ(double lengthCm) {
        Checked.positive("lengthCm", lengthCm);
        return jPerCm * lengthCm;
    }

    /** Fluence on the inner face of a lumen, J/cm2. */
    public double fluenceJPerCm2(double lumenMm) {
        return jPerCm / circumferenceCm(lumenMm);
    }

    /** Whether at 1940 nm so much energy is within what left veins to reopen; above it the series saw none (S-0026). */
    public boolean reopenedAt1940Nm(FollowUpLimits limits) {
        return jPerCm <= limits.reopenedAt1940NmUpToJPerCm();
    }

    private static double circumferenceCm(double lumenMm) {
        Checked.positive("lumenMm", lumenMm);
        return Math.PI * lumenMm / MM_PER_CM;
    }
}
