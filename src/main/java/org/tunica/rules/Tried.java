package org.tunica.rules;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How one rule stands to one option, condition by condition.
 *
 * @param truth whether the rule speaks, stays quiet, or is in doubt
 */
public record Tried(Rule rule, Truth truth, List<Tested> conditions) {
    public Tried {
        conditions = List.copyOf(conditions);
    }

    /** The conditions that fail. */
    public List<Tested> failed() {
        return conditions.stream()
                .filter(tested -> tested.truth() == Truth.FALSE)
                .toList();
    }

    /**
     * One condition with what it met.
     *
     * @param met what the case or the model says, in words; empty for what earlier rules said
     * @param awayShare for a number: its distance to the nearest limit of the condition, as a share of that limit
     */
    public record Tested(Condition condition, Truth truth, String met, OptionalDouble awayShare) {}
}
