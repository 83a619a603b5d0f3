package org.tunica.treatment;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.KnownWords;
import org.tunica.casefile.PlausibleRange;
import org.tunica.casefile.UcumWords;

/** Reads numbers and refuses those outside their plausible range in knowledge/measurements.yaml. */
final class RangedNumbers {
    private final KnownWords known;

    RangedNumbers(KnownWords known) {
        this.known = known;
    }

    OptionalDouble number(FieldReader reader, String field, String rangePath) {
        PlausibleRange range = known.plausibleRange(rangePath)
                .orElseThrow(() -> new IllegalArgumentException("no plausible range for " + rangePath));
        OptionalDouble number = reader.number(field);
        if (number.isPresent() && !range.holds(number.getAsDouble())) {
            reader.fault(
                    field,
                    "must be " + Plain.number(range.min()) + " to " + Plain.number(range.max())
                            + UcumWords.behind(range.unit()) + ", is " + Plain.number(number.getAsDouble()));
        }
        return number;
    }

    double required(FieldReader reader, String field, String rangePath) {
        OptionalDouble number = number(reader, field, rangePath);
        reader.required(field, number.isPresent() ? Optional.of(number) : Optional.empty());
        return number.orElse(Double.NaN);
    }

    /** A whole number; another one is a fault. */
    OptionalInt whole(FieldReader reader, String field, String rangePath) {
        OptionalDouble number = number(reader, field, rangePath);
        if (number.isEmpty()) {
            return OptionalInt.empty();
        }
        if (number.getAsDouble() != Math.rint(number.getAsDouble())) {
            reader.fault(field, "must be a whole number, is " + Plain.number(number.getAsDouble()));
        }
        return OptionalInt.of((int) number.getAsDouble());
    }
}
