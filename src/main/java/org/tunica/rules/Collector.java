package org.tunica.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Takes the verdicts of one run. Public because the engine hands it to the rules. */
public final class Collector {
    private final List<Verdict> verdicts = new ArrayList<>();
    private final Set<Spoken> spoken = new HashSet<>();

    /** Why a verdict is in doubt: nouns of what is not recorded. */
    private final Map<EarlierVerdict, Set<String>> doubts = new HashMap<>();

    Collector() {}

    /**
     * Takes what a rule says about an option and gives it as a fact for later stages.
     *
     * <p>The twin of a rule that has spoken stays silent.
     */
    @Nullable
    EarlierVerdict take(Rule rule, OptionFacts facts, boolean certain) {
        Spoken now = new Spoken(rule.id(), facts.key());
        if (!spoken.add(now)) {
            return null;
        }
        Set<String> doubt = certain ? Set.of() : doubt(rule, facts);
        if (!certain && doubt.isEmpty()) {
            throw new IllegalStateException(rule.id() + " is in doubt about " + facts.key() + " without a cause");
        }
        verdicts.add(new Verdict(rule, facts.key(), List.copyOf(new TreeSet<>(doubt))));
        EarlierVerdict fact = EarlierVerdict.of(rule, facts.key(), certain);
        doubts.computeIfAbsent(fact, key -> new TreeSet<>()).addAll(doubt);
        return fact;
    }

    List<Verdict> verdicts() {
        return verdicts.stream().sorted().toList();
    }

    private Set<String> doubt(Rule rule, OptionFacts facts) {
        Set<String> nouns = new TreeSet<>();
        rule.onOption().stream()
                .filter(condition -> condition.truth(facts) == Truth.UNKNOWN)
                .forEach(condition -> nouns.add(condition.noun()));
        for (Condition.OnVerdicts condition : rule.onVerdicts()) {
            EarlierVerdict doubtful = new EarlierVerdict(facts.key(), condition.fact(), false);
            nouns.addAll(doubts.getOrDefault(doubtful, Set.of()));
        }
        return nouns;
    }

    private record Spoken(String ruleId, OptionKey option) {}
}
