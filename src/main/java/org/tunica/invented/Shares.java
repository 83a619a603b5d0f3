package org.tunica.invented;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.tunica.knowledge.Distribution;

/** Several things that are so or not, each by itself with its share. */
final class Shares<T> {
    private final Map<T, Double> shares = new LinkedHashMap<>();

    private Shares() {}

    static <T> Shares<T> of(Distribution distribution, Function<String, T> read) {
        Shares<T> all = new Shares<>();
        distribution.numbers().forEach((word, share) -> all.shares.put(read.apply(word), share));
        return all;
    }

    /** The share of one thing; a thing that is not named never is. */
    double of(T thing) {
        return shares.getOrDefault(thing, 0.0);
    }

    /** The things that are so in one case, in their order. */
    Set<T> from(Draw draw) {
        Set<T> drawn = new TreeSet<>();
        shares.forEach((thing, share) -> {
            if (draw.happens(share)) {
                drawn.add(thing);
            }
        });
        return Collections.unmodifiableSet(drawn);
    }
}
