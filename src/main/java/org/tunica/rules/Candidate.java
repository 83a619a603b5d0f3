package org.tunica.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** An option while the rules run over it: its facts, what was found so far, what was said. The engine matches these. */
public final class Candidate {
    private final OptionFacts facts;
    private final List<Verdict> verdicts = new ArrayList<>();
    private final Set<String> certain = new HashSet<>();

    /** Why a finding is in doubt: nouns of what is not recorded. */
    private final Map<String, Set<String>> doubtful = new HashMap<>();

    Candidate(OptionFacts facts) {
        this.facts = facts;
    }

    OptionFacts facts() {
        return facts;
    }

    /** What was said so far, in the order of the rules. */
    List<Verdict> verdicts() {
        return verdicts;
    }

    /** Takes what a rule says that may hold, and gives the finding the engine does not know of yet, if it is one. */
    @Nullable
    FindingFact take(Rule rule) {
        Set<String> doubt = doubt(rule);
        verdicts.add(new Verdict(rule, facts.key(), List.copyOf(doubt)));
        return rule.conclusion() instanceof Conclusion.Find find && found(find.finding(), doubt)
                ? new FindingFact(this, find.finding(), doubt.isEmpty())
                : null;
    }

    private boolean found(String finding, Set<String> doubt) {
        if (doubt.isEmpty()) {
            return certain.add(finding);
        }
        Set<String> known = doubtful.get(finding);
        if (known == null) {
            doubtful.put(finding, doubt);
            return true;
        }
        known.addAll(doubt);
        return false;
    }

    /** Nouns of what a rule that may hold cannot tell; empty when it holds for certain. */
    private Set<String> doubt(Rule rule) {
        Set<String> nouns = new TreeSet<>();
        for (Condition condition : rule.conditions()) {
            if (condition instanceof Condition.Found found) {
                nouns.addAll(doubt(found));
            } else if (condition instanceof Condition.OnOption own && own.truth(facts) == Truth.UNKNOWN) {
                nouns.add(own.field().noun());
            }
        }
        return nouns;
    }

    private Set<String> doubt(Condition.Found condition) {
        return condition.wanted() && certain.contains(condition.finding())
                ? Set.of()
                : doubtful.getOrDefault(condition.finding(), Set.of());
    }
}
