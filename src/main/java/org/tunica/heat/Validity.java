package org.tunica.heat;

import java.util.function.ToDoubleFunction;

/** The range of inputs the heat model answers for; outside it refuses. Ids {@code heat.validity.*}. */
public record Validity(
        Range wall,
        Range film,
        Range tumescent,
        Range start,
        Range blood,
        Range power,
        Range pullback,
        Range cycles,
        Range pulses,
        double leastPeclet) {

    /** From the smallest to the largest accepted value, in the unit of the field. */
    public record Range(double min, double max) {
        void check(String name, double value) {
            Checks.within(name, value, min, max);
        }

        /** Whether a value lies in the range. */
        public boolean holds(double value) {
            return value >= min && value <= max;
        }
    }

    static Validity from(ToDoubleFunction<String> number) {
        return new Validity(
                range(number, "heat.validity.wall"),
                range(number, "heat.validity.film"),
                range(number, "heat.validity.tumescent"),
                range(number, "heat.validity.start"),
                range(number, "heat.validity.blood"),
                range(number, "heat.validity.power"),
                range(number, "heat.validity.pullback"),
                range(number, "heat.validity.cycles"),
                range(number, "heat.validity.pulses"),
                number.applyAsDouble("heat.validity.peclet.min"));
    }

    static Range range(ToDoubleFunction<String> number, String id) {
        return new Range(number.applyAsDouble(id + ".min"), number.applyAsDouble(id + ".max"));
    }
}
