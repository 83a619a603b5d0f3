package org.tunica.firmness;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.tunica.casefile.Criterion;
import org.tunica.casefile.Room;

/**
 * What a cost class is worth, draw by draw: low the best, high nothing, middling anywhere between, anew in each draw and the
 * same for all options. A class that is not given is worth nothing. Draws are of a generator of their own, so that nothing
 * else is drawn differently where cost is weighed.
 */
final class CostWorth {
    private final double[] middling;

    /** As many draws as there are weights; the same seed gives the same. */
    CostWorth(int draws, long seed) {
        this.middling = new SplittableRandom(seed).doubles(draws).toArray();
    }

    /** Worth of a class in one draw, 0 to 1. */
    double at(int draw, Optional<Room.CostClass> costClass) {
        return costClass.map(known -> worth(known, middling[draw])).orElse(0.0);
    }

    private static double worth(Room.CostClass known, double middling) {
        return switch (known) {
            case LOW -> 1;
            case MIDDLING -> middling;
            case HIGH -> 0;
        };
    }

    /** What options are weighed by: cost where it tells two of them apart, all else always. */
    static List<Criterion> weighed(List<Worths> options) {
        Stream<Criterion> all = Arrays.stream(Criterion.values());
        return tellsApart(options)
                ? all.toList()
                : all.filter(criterion -> criterion != Criterion.LOW_COST).toList();
    }

    /** A high class and none at all are worth the same. */
    private static boolean tellsApart(List<Worths> options) {
        return options.stream()
                        .map(option -> option.costClass().orElse(Room.CostClass.HIGH))
                        .distinct()
                        .count()
                > 1;
    }
}
