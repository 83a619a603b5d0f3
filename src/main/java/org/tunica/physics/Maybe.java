package org.tunica.physics;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** Arithmetic on numbers that may be unknown: the result is known only when every part is. */
final class Maybe {
    private Maybe() {}

    static OptionalDouble map(OptionalDouble a, DoubleUnaryOperator f) {
        return a.isPresent() ? OptionalDouble.of(f.applyAsDouble(a.getAsDouble())) : OptionalDouble.empty();
    }

    static OptionalDouble both(OptionalDouble a, OptionalDouble b, DoubleBinaryOperator f) {
        return a.isPresent() && b.isPresent()
                ? OptionalDouble.of(f.applyAsDouble(a.getAsDouble(), b.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** A length or volume of zero computes nothing: it counts as unknown rather than as an error of the program. */
    static OptionalDouble positive(OptionalDouble a) {
        return a.isPresent() && a.getAsDouble() > 0 ? a : OptionalDouble.empty();
    }

    /** Three-valued "and": false as soon as one is false, unknown when none is false but one is unknown. */
    static Optional<Boolean> and(Optional<Boolean> a, Optional<Boolean> b) {
        if (a.equals(Optional.of(false)) || b.equals(Optional.of(false))) {
            return Optional.of(false);
        }
        return a.isPresent() && b.isPresent() ? Optional.of(true) : Optional.empty();
    }
}
