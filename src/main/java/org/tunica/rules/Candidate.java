package org.tunica.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** An option while the rules run over it: its facts and what was said of it so far. Public because the engine reads it. */
public final class Candidate {
    private final OptionFacts facts;
    private final List<Verdict> verdicts = new ArrayList<>();
    private final Set<String> certain = new HashSet<>();

    /** Why what was said is in doubt: nouns of what is not recorded. */
    private final Map<String, Set<String>> doubtful = new HashMap<>();

    Candidate(OptionFacts facts) {
        this.facts = facts;
    }

    OptionFacts facts() {
        return facts;
    }

    /** The verdicts so far, in the order of the rules. */
    List<Verdict> verdicts() {
        return verdicts;
    }

    /** Takes the verdict of a rule of which no condition fails; it is in doubt where some cannot be told. */
    Verdict take(Rule rule) {
        Verdict verdict = new Verdict(rule, facts.key(), List.copyOf(doubt(rule)));
        verdicts.add(verdict);
        return verdict;
    }

    /** Notes what later rules may ask for; whether it is new to them. */
    boolean note(String fact, Verdict verdict) {
        if (verdict.speaks()) {
            return certain.add(fact);
        }
        boolean fresh = !doubtful.containsKey(fact);
        doubtful.computeIfAbsent(fact, key -> new TreeSet<>()).addAll(verdict.doubt());
        return fresh;
    }

    /** Whether what was said so far lets a condition hold: what is wanted may be in doubt, what is not must not be certain. */
    boolean leavesOpen(Condition.OnVerdicts condition) {
        boolean there = certain.contains(condition.fact());
        return condition.wanted() ? there || doubtful.containsKey(condition.fact()) : !there;
    }

    private Set<String> doubt(Rule rule) {
        Set<String> nouns = Set.of();
        for (Condition condition : rule.conditions()) {
            Set<String> more = doubt(condition);
            if (!more.isEmpty()) {
                nouns = nouns.isEmpty() ? new TreeSet<>() : nouns;
                nouns.addAll(more);
            }
        }
        return nouns;
    }

    private Set<String> doubt(Condition condition) {
        if (condition instanceof Condition.OnOption own) {
            return own.truth(facts) == Truth.UNKNOWN ? Set.of(own.noun()) : Set.of();
        }
        return doubt((Condition.OnVerdicts) condition);
    }

    /** What is wanted and there for certain is in no doubt, whatever else says the same. */
    private Set<String> doubt(Condition.OnVerdicts earlier) {
        return earlier.wanted() && certain.contains(earlier.fact())
                ? Set.of()
                : doubtful.getOrDefault(earlier.fact(), Set.of());
    }
}
