package org.tunica.session;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What treating one segment with one technique takes of what a session shares.
 *
 * @param amounts in the unit of each share; a share that is not taken is absent
 * @param unknown shares taken by an amount that cannot be told
 * @param position how the patient lies
 * @param generator the heat generator it needs
 * @param time the parts of {@link Shared#TIME}, minutes
 */
record Demand(
        Map<Shared, Double> amounts,
        List<Shared> unknown,
        Position position,
        Optional<String> generator,
        List<TimePart> time) {

    Demand {
        amounts = Map.copyOf(amounts);
        unknown = List.copyOf(unknown);
        time = List.copyOf(time);
    }

    double amount(Shared shared) {
        return amounts.getOrDefault(shared, 0.0);
    }

    /** The sum of some demands, by share. */
    static Map<Shared, Double> sum(List<Demand> demands) {
        Map<Shared, Double> sums = new EnumMap<>(Shared.class);
        demands.forEach(
                demand -> demand.amounts().forEach((shared, amount) -> sums.merge(shared, amount, Double::sum)));
        return sums;
    }
}
