package org.tunica.knowledge;

import java.util.List;
import java.util.Map;
import org.tunica.casefile.Word;

/** How two values of an attribute are compared; the same value is always wholly alike. */
public sealed interface Comparison {
    /** The word for it in files. */
    Kind kind();

    /** The kinds, as files spell them. */
    enum Kind implements Word {
        NUMERIC,
        ORDINAL,
        CATEGORICAL,
        TOGETHER
    }

    /**
     * Numbers: likeness falls from 1 at no difference to 0 at a difference of {@code range}.
     *
     * @param range in {@code unit}
     * @param exponent 1 falls evenly; more falls faster at first
     * @param upTo values above it count as it, in {@code unit}; infinite when none do
     * @param unit UCUM code
     */
    record Numeric(double range, double exponent, double upTo, String unit) implements Comparison {
        @Override
        public Kind kind() {
            return Kind.NUMERIC;
        }
    }

    /** Words on a scale: each at its step. */
    record Ordinal(Map<String, Double> steps) implements Comparison {
        @Override
        public Kind kind() {
            return Kind.ORDINAL;
        }
    }

    /**
     * Words without an order.
     *
     * @param groups how alike any two different words of a group are; the highest counts
     * @param otherwise how alike two words are that share no group
     */
    record Categorical(List<Group> groups, double otherwise) implements Comparison {
        public Categorical {
            groups = List.copyOf(groups);
        }

        @Override
        public Kind kind() {
            return Kind.CATEGORICAL;
        }
    }

    /** Words of which any two are so much alike, 0 to 1. */
    record Group(List<String> words, double likeness) {
        public Group {
            words = List.copyOf(words);
        }
    }

    /**
     * Numbers that mean little one without the other, by the way they belong to; their likenesses are multiplied.
     *
     * @param ways the numbers of each way, in file order
     */
    record Together(Map<String, Map<String, Numeric>> ways) implements Comparison {
        @Override
        public Kind kind() {
            return Kind.TOGETHER;
        }
    }
}
