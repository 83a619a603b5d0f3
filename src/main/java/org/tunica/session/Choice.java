package org.tunica.session;

import java.util.Map;
import java.util.Optional;

/**
 * One technique a segment may get, as the solver sees it.
 *
 * @param worth points it brings; higher is better
 * @param takes amounts of what is shared, in whole steps, rounded up
 * @param generator the heat generator it needs
 * @param prone whether the patient must lie prone
 */
record Choice(String technique, int worth, Map<Shared, Integer> takes, Optional<String> generator, boolean prone) {
    Choice {
        takes = Map.copyOf(takes);
    }

    int takes(Shared shared) {
        return takes.getOrDefault(shared, 0);
    }

    /** Whether it is worth no less and takes no more of anything than another. */
    boolean atLeastAsGoodAs(Choice other) {
        return worth >= other.worth
                && prone == other.prone
                && (generator.isEmpty() || generator.equals(other.generator))
                && Shared.AMOUNTS.stream().allMatch(shared -> takes(shared) <= other.takes(shared));
    }
}
