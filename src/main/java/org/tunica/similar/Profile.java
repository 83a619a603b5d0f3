package org.tunica.similar;

import java.util.Arrays;
import java.util.List;

/**
 * What is compared of a segment, as whole numbers: measurements and settings in thousandths of their unit, which is finer
 * than any scan and exact to store, and words by their place in the {@link Vocabulary}. Immutable.
 */
public final class Profile {
    /** Stands where a value is not recorded. */
    static final int UNKNOWN = Integer.MIN_VALUE;

    private static final double PARTS = 1000;
    private static final double MOST = 1_000_000;

    private final int[] values;

    private Profile(int[] values) {
        this.values = values;
    }

    /** A profile of these values, column by column. */
    static Profile of(List<Integer> values) {
        return new Profile(values.stream().mapToInt(Integer::intValue).toArray());
    }

    /** Its values, column by column. */
    List<Integer> values() {
        return Arrays.stream(values).boxed().toList();
    }

    /** The value of a column, or {@link #UNKNOWN}. */
    int at(int column) {
        return values[column];
    }

    /** Whether a field is known. */
    boolean knows(Field field) {
        return values[field.column()] != UNKNOWN;
    }

    /** A number in its unit. */
    static double inUnit(int thousandths) {
        return thousandths / PARTS;
    }

    /** A number in thousandths of its unit; a number beyond all measure counts as unknown. */
    static int thousandths(double number) {
        return Math.abs(number) <= MOST ? (int) Math.round(number * PARTS) : UNKNOWN;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Profile profile && Arrays.equals(values, profile.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    /** Gathers the values of a profile; what is not set is unknown. */
    static final class Builder {
        private final int[] values = new int[Field.COLUMNS];

        Builder() {
            Arrays.fill(values, UNKNOWN);
        }

        Builder set(int column, int value) {
            values[column] = value;
            return this;
        }

        Builder number(Field field, double number) {
            return set(field.column(), thousandths(number));
        }

        Profile build() {
            return new Profile(values.clone());
        }
    }
}
