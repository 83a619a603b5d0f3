package org.tunica.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Takes the verdicts of one run. Public because the engine hands it to the rules. */
public final class Collector {
    private final Map<OptionKey, OfOption> options = new TreeMap<>();

    Collector() {}

    /**
     * Takes what a rule says about an option it may hold for, and gives the finding to insert, if it is a new one.
     */
    @Nullable
    FindingFact take(Rule rule, OptionFacts facts) {
        OfOption option = options.computeIfAbsent(facts.key(), key -> new OfOption());
        Set<String> doubt = option.doubt(rule, facts);
        option.verdicts.add(new Verdict(rule, facts.key(), List.copyOf(doubt)));
        if (!(rule.conclusion() instanceof Conclusion.Find find) || !option.find(find.finding(), doubt)) {
            return null;
        }
        return new FindingFact(facts.key(), find.finding(), doubt.isEmpty());
    }

    /** All verdicts in order; the rules speak in theirs, so that little is left to sort. */
    List<Verdict> verdicts() {
        List<Verdict> all = new ArrayList<>();
        options.values().forEach(option -> all.addAll(option.verdicts));
        all.sort(null);
        return Collections.unmodifiableList(all);
    }

    /** What was said of one option so far. */
    private static final class OfOption {
        private final List<Verdict> verdicts = new ArrayList<>();
        private final Set<String> certain = new HashSet<>();

        /** Why a finding is in doubt: nouns of what is not recorded. */
        private final Map<String, Set<String>> doubtful = new HashMap<>();

        /** Notes a finding; whether the rules do not know of it yet. */
        boolean find(String finding, Set<String> doubt) {
            if (doubt.isEmpty()) {
                return certain.add(finding);
            }
            boolean first = !doubtful.containsKey(finding);
            doubtful.computeIfAbsent(finding, key -> new TreeSet<>()).addAll(doubt);
            return first;
        }

        /** Nouns of what a rule that may hold cannot tell; empty when it holds for certain. */
        Set<String> doubt(Rule rule, OptionFacts facts) {
            Set<String> nouns = Set.of();
            for (Condition condition : rule.conditions()) {
                Set<String> more = doubt(condition, facts);
                if (!more.isEmpty()) {
                    nouns = nouns.isEmpty() ? new TreeSet<>() : nouns;
                    nouns.addAll(more);
                }
            }
            return nouns;
        }

        private Set<String> doubt(Condition condition, OptionFacts facts) {
            if (condition instanceof Condition.Found found) {
                return found.wanted() && certain.contains(found.finding())
                        ? Set.of()
                        : doubtful.getOrDefault(found.finding(), Set.of());
            }
            Condition.OnOption own = (Condition.OnOption) condition;
            return own.truth(facts) == Truth.UNKNOWN ? Set.of(own.field().noun()) : Set.of();
        }
    }
}
