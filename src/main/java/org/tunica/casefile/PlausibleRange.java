package org.tunica.casefile;

/**
 * What may be entered at all for a measurement; outside it a typing error or a wrong unit is more likely than the value.
 *
 * @param min smallest value accepted, in the unit
 * @param max largest value accepted, in the unit
 * @param unit UCUM code
 */
public record PlausibleRange(double min, double max, String unit) {
    /** Whether a value lies inside, ends included. */
    public boolean holds(double value) {
        return value >= min && value <= max;
    }
}
