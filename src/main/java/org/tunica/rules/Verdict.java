package org.tunica.rules;

import java.util.Comparator;
import java.util.List;

/**
 * What one rule says about one option.
 *
 * @param doubt nouns of what is not recorded; empty when the rule speaks, filled when it is in doubt
 */
public record Verdict(Rule rule, OptionKey option, List<String> doubt) implements Comparable<Verdict> {
    /** The order of rules: by stage, then by id. */
    static final Comparator<Rule> ORDER_OF_RULES = Comparator.comparingInt(
                    (Rule rule) -> rule.conclusion().kind().stage())
            .thenComparing(Rule::id);

    private static final Comparator<Verdict> ORDER =
            Comparator.comparing(Verdict::option).thenComparing(Verdict::rule, ORDER_OF_RULES);

    public Verdict {
        doubt = List.copyOf(doubt);
    }

    /** Whether all conditions hold. */
    public boolean speaks() {
        return doubt.isEmpty();
    }

    /** The kind of the rule's conclusion. */
    public Conclusion.Kind kind() {
        return rule.conclusion().kind();
    }

    @Override
    public int compareTo(Verdict other) {
        return ORDER.compare(this, other);
    }
}
