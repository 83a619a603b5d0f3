package org.tunica.knowledge;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tunica.casefile.Word;

/**
 * From what a part of a made-up case is drawn.
 *
 * @param id for example {@code invented.age}
 * @param shape how its numbers are meant
 * @param unit UCUM code of what is drawn
 * @param numbers by name, in file order
 */
public record Distribution(
        String id, String says, Shape shape, String unit, Map<String, Double> numbers, Provenance provenance) {
    public Distribution {
        numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
    }

    /**
     * A number by its name.
     *
     * @throws IllegalArgumentException when there is none of that name
     */
    public double number(String name) {
        Double number = numbers.get(name);
        if (number == null) {
            throw new IllegalArgumentException(id + " has no number " + name + ", only " + numbers.keySet());
        }
        return number;
    }

    /** How the numbers of a distribution are meant. */
    public enum Shape implements Word {
        /** One of several words, by weight. */
        CHOICE,
        /** Each word by itself, with its probability. */
        SHARES,
        /** Numbers taken as they are. */
        VALUES,
        /** A bell with closed form, by mean and standard deviation, cut at both ends. */
        LOGISTIC("mean", "sd", "low", "high"),
        /** The same of the logarithm, by median and standard deviation of the logarithm, cut at both ends. */
        LOG_LOGISTIC("median", "spread", "low", "high");

        private final List<String> names;

        Shape(String... names) {
            this.names = List.of(names);
        }

        /** The names its numbers must have; empty where they are free. */
        List<String> names() {
            return names;
        }
    }
}
