package org.tunica.rules;

import java.util.BitSet;
import java.util.List;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Quantity;

/** Every comparison of a number that some rule makes, once. */
final class NumberBands {
    private final List<Condition.OnOption> comparisons;

    NumberBands(List<Rule> rules) {
        this.comparisons = rules.stream()
                .flatMap(rule -> rule.onOption().stream())
                .filter(condition -> !(condition instanceof Condition.Elsewhere))
                .filter(condition -> !condition.limits().isEmpty())
                .distinct()
                .toList();
    }

    /** Two bits for each comparison: holds, cannot be told. */
    BitSet of(OptionFacts option) {
        BitSet bands = new BitSet(2 * comparisons.size());
        for (int i = 0; i < comparisons.size(); i++) {
            Truth truth = comparisons.get(i).truth(option);
            bands.set(2 * i, truth == Truth.TRUE);
            bands.set(2 * i + 1, truth == Truth.UNKNOWN);
        }
        return bands;
    }

    /** The limits a number is compared with, rising. */
    List<Double> limits(GlossaryField field) {
        return comparisons.stream()
                .filter(condition -> condition.field().equals(field))
                .flatMap(condition -> condition.limits().stream())
                .map(Quantity::value)
                .distinct()
                .sorted()
                .toList();
    }
}
