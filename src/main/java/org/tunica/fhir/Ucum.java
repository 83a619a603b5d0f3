package org.tunica.fhir;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Converts between the units of UCUM in which this work is measured. The list is closed and every factor is the exact one
 * of the standard, so a decimal stays the decimal it was: 0.62 cm is 6.2 mm and not a hair more.
 *
 * <p>A unit that is not in the list is refused by its caller, by name; nothing is taken for another.
 */
final class Ucum {
    /** The system a quantity must name; without it, nobody says that the code is one of UCUM. */
    static final String SYSTEM = "http://unitsofmeasure.org";

    private static final Map<String, Unit> UNITS = units();

    private Ucum() {}

    private enum Dimension {
        LENGTH,
        TIME,
        MASS,
        PRESSURE,
        NUMBER
    }

    /** A unit as a multiple of the first one of its dimension. */
    private record Unit(Dimension dimension, BigDecimal factor) {}

    /** A value in another unit; nothing when one of the units is unknown or they measure different things. */
    static OptionalDouble convert(BigDecimal value, String from, String to) {
        Unit source = UNITS.get(from);
        Unit target = UNITS.get(to);
        if (source == null || target == null || source.dimension() != target.dimension()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value.multiply(source.factor())
                .divide(target.factor(), MathContext.DECIMAL128)
                .doubleValue());
    }

    /** Why a unit cannot be used for another; nothing when it can. */
    static Optional<String> refusal(String from, String to) {
        Unit source = UNITS.get(from);
        if (source == null) {
            return Optional.of("the unit " + from + " is not one this program converts");
        }
        return source.dimension() == UNITS.get(to).dimension()
                ? Optional.empty()
                : Optional.of("the unit " + from + " does not measure what is asked in " + to);
    }

    private static Map<String, Unit> units() {
        Map<String, Unit> units = new HashMap<>();
        put(
                units,
                Dimension.LENGTH,
                "m",
                "1",
                "dm",
                "0.1",
                "cm",
                "0.01",
                "mm",
                "0.001",
                "um",
                "0.000001",
                "km",
                "1000");
        put(units, Dimension.LENGTH, "[in_i]", "0.0254", "[ft_i]", "0.3048", "[yd_i]", "0.9144");
        put(units, Dimension.TIME, "s", "1", "ms", "0.001", "us", "0.000001", "min", "60", "h", "3600", "d", "86400");
        put(units, Dimension.TIME, "a", "31557600", "a_j", "31557600", "mo", "2629800", "wk", "604800");
        put(units, Dimension.MASS, "g", "1", "kg", "1000", "mg", "0.001", "hg", "100", "t", "1000000");
        put(units, Dimension.MASS, "[lb_av]", "453.59237", "[oz_av]", "28.349523125", "[stone_av]", "6350.29318");
        put(
                units,
                Dimension.PRESSURE,
                "Pa",
                "1",
                "hPa",
                "100",
                "kPa",
                "1000",
                "mm[Hg]",
                "133.322",
                "cm[Hg]",
                "1333.22");
        put(units, Dimension.PRESSURE, "m[Hg]", "133322", "cm[H2O]", "98.0665", "mbar", "100", "bar", "100000");
        put(units, Dimension.NUMBER, "1", "1", "%", "0.01", "{ratio}", "1", "{index}", "1");
        return units;
    }

    private static void put(Map<String, Unit> units, Dimension dimension, String... codesAndFactors) {
        for (int i = 0; i < codesAndFactors.length; i += 2) {
            units.put(codesAndFactors[i], new Unit(dimension, new BigDecimal(codesAndFactors[i + 1])));
        }
    }

    /** Every unit of the list. */
    static Set<String> codes() {
        return UNITS.keySet();
    }
}
