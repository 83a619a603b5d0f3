package org.tunica.anonymity;

/**
 * What may stand before a unit of measure, so that no other number can borrow the unit to get through.
 *
 * @param max the greatest number, in that unit
 * @param decimals the most digits behind the point
 * @param clear whether the unit can be nothing else; one that could be an initial needs plain words around it
 */
public record UnitSpan(double max, int decimals, boolean clear) {
    public UnitSpan {
        if (!(max > 0) || decimals < 0) {
            throw new IllegalArgumentException("max must be above 0 and decimals at least 0: " + max + ", " + decimals);
        }
    }

    /** Whether a number written with a point may stand before the unit. */
    boolean holds(String number) {
        int point = number.indexOf('.');
        int digits = point < 0 ? 0 : number.length() - point - 1;
        return digits <= decimals && Double.parseDouble(number) <= max;
    }
}
