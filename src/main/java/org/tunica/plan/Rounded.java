package org.tunica.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;

/** Numbers of an output, to four significant digits: more would claim what no measurement here can give. */
final class Rounded {
    private static final MathContext FOUR_DIGITS = new MathContext(4);

    private Rounded() {}

    static double of(double value) {
        return new BigDecimal(value).round(FOUR_DIGITS).doubleValue();
    }

    static OptionalDouble of(OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(of(value.getAsDouble())) : value;
    }
}
