package org.tunica.heat;

/**
 * Equivalent minutes at a reference temperature of 43 C (CEM43): sum of minutes times ratio^(reference - T).
 *
 * <p>Above about 50 C the figure is an extrapolation; show the peak temperature beside it.
 *
 * @param referenceC temperature at which a minute counts as a minute
 * @param ratioAbove ratio per degree at and above it
 * @param ratioBelow ratio per degree below it
 * @param floorC below it nothing counts
 */
record ThermalDose(double referenceC, double ratioAbove, double ratioBelow, double floorC) {
    private static final double S_PER_MIN = 60;

    double minutes(double temperatureC, double seconds) {
        if (temperatureC < floorC) {
            return 0;
        }
        double ratio = temperatureC >= referenceC ? ratioAbove : ratioBelow;
        return seconds / S_PER_MIN * Math.pow(ratio, referenceC - temperatureC);
    }
}
