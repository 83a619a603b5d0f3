package org.tunica.knowledge;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Word;

/**
 * A question on which sources disagree, and what the rules make of each value. The most careful value always raises its
 * voice; the loosest one that has a source of its own is where a choice ends.
 *
 * @param id for example {@code CON-01}
 * @param values ids of the limits that hold the values, each with its source
 * @param steps what happens at each value
 * @param why why so and not otherwise
 * @param left why it is not settled here; present exactly when there is no step
 */
public record Conflict(
        String id, String question, List<String> values, List<Step> steps, String why, Optional<String> left) {
    public Conflict {
        values = List.copyOf(values);
        steps = List.copyOf(steps);
    }

    /**
     * What rules do at one value.
     *
     * @param at the limit, absent where words and not numbers disagree
     * @param rules rules that conclude this; each names the limit
     */
    public record Step(Does does, Optional<String> at, List<String> rules) {
        public Step {
            rules = List.copyOf(rules);
        }
    }

    /** What a rule does with a value. */
    public enum Does implements Word {
        /** The option is excluded. */
        BARS,
        /** The option carries a caution. */
        WARNS,
        /** It counts for or against the option. */
        COUNTS,
        /** A setting takes the value. */
        SETS
    }
}
