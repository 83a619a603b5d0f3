package org.tunica.web;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.FieldReader;

/** Reads whole numbers of settings, each within its bounds. */
final class WholeNumber {
    private WholeNumber() {}

    /** The number of a field, or none; one that is out of bounds is a fault and reads as none. */
    static Optional<Integer> read(FieldReader reader, String field, int least, int most) {
        OptionalDouble number = reader.number(field);
        if (number.isEmpty()) {
            return Optional.empty();
        }
        double value = number.getAsDouble();
        if (value != Math.rint(value) || value < least || value > most) {
            reader.fault(field, "must be a whole number from " + least + " to " + most);
            return Optional.empty();
        }
        return Optional.of((int) value);
    }
}
