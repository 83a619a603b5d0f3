package org.tunica.anonymity;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The ways to tell one thing an outsider could know of a person, each less exactly than the one before.
 *
 * @param name of the thing
 * @param rungs from the exact value, on rung 0, upwards
 */
public record Ladder(String name, List<Rung> rungs) {
    public Ladder {
        rungs = List.copyOf(rungs);
        if (rungs.isEmpty()) {
            throw new IllegalArgumentException("the ladder of " + name + " needs a rung");
        }
    }

    /** The last rung. */
    public int top() {
        return rungs.size() - 1;
    }

    /**
     * One way to tell it.
     *
     * @param says in words
     * @param of what it makes of an exact value
     */
    public record Rung(String says, UnaryOperator<String> of) {
        /** The value as it is. */
        public static Rung exact(String says) {
            return new Rung(says, UnaryOperator.identity());
        }

        /** Nothing is told any more. */
        public static Rung untold() {
            return new Rung("not told", value -> "*");
        }
    }
}
