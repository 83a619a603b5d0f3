package org.tunica.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tunica.knowledge.Quantity;

/**
 * What the rules of one release say otherwise than those of another, to tell which options it can concern.
 *
 * <p>What the rules say of an option follows from three things alone: which of them have no false condition about the option
 * itself and with which doubts, what they ask of earlier stages, and what they conclude. Where all three are the same for
 * every rule, so are all verdicts; there is nothing to judge again. Titles, reasons and sources have no say in it. Both
 * releases must have the same glossary and the same numbers of the case.
 */
public final class RuleShift {
    private final List<Shifted> shifted;

    /**
     * A rule that is not the same in two releases.
     *
     * @param asksOfHeat whether either of them asks for what a search for a heat setting finds
     */
    private record Shifted(Optional<Rule> before, Optional<Rule> after, boolean asksOfHeat) {
        static Shifted of(Optional<Rule> before, Optional<Rule> after) {
            return new Shifted(
                    before,
                    after,
                    Stream.concat(before.stream(), after.stream())
                            .flatMap(rule -> rule.onOption().stream())
                            .anyMatch(condition -> FactFields.OF_HEAT.contains(
                                    condition.field().id())));
        }

        /** Whether what heat foresees can still matter: it cannot where another condition is false already. */
        boolean restsOnHeat(OptionFacts withoutHeat) {
            return asksOfHeat
                    && (before.flatMap(rule -> doubts(rule, withoutHeat)).isPresent()
                            || after.flatMap(rule -> doubts(rule, withoutHeat)).isPresent());
        }

        boolean mayTurn(OptionFacts facts) {
            Optional<Set<String>> was = before.flatMap(rule -> doubts(rule, facts));
            Optional<Set<String>> is = after.flatMap(rule -> doubts(rule, facts));
            return !was.equals(is) || was.isPresent() && !sameBeyondTheOption();
        }

        /** What is not recorded of what the rule asks about the option itself; nothing when some condition is false. */
        private static Optional<Set<String>> doubts(Rule rule, OptionFacts facts) {
            Set<String> nouns = new TreeSet<>();
            for (Condition condition : rule.conditions()) {
                if (condition instanceof Condition.OnOption own) {
                    Truth truth = own.truth(facts);
                    if (truth == Truth.FALSE) {
                        return Optional.empty();
                    }
                    if (truth == Truth.UNKNOWN) {
                        nouns.add(own.noun());
                    }
                }
            }
            return Optional.of(nouns);
        }

        private boolean sameBeyondTheOption() {
            return before.isPresent()
                    && after.isPresent()
                    && before.get().onVerdicts().equals(after.get().onVerdicts())
                    && conclusion(before.get()).equals(conclusion(after.get()));
        }
    }

    private RuleShift(List<Shifted> shifted) {
        this.shifted = shifted;
    }

    /** What the rules before the ranking say otherwise. */
    public static RuleShift between(RuleBook before, RuleBook after) {
        Map<String, Rule> was = byId(before);
        Map<String, Rule> is = byId(after);
        Set<String> ids = new TreeSet<>(was.keySet());
        ids.addAll(is.keySet());
        List<Shifted> shifted = new ArrayList<>();
        for (String id : ids) {
            Optional<Rule> then = Optional.ofNullable(was.get(id));
            Optional<Rule> now = Optional.ofNullable(is.get(id));
            if (!then.map(RuleShift::logic).equals(now.map(RuleShift::logic))) {
                shifted.add(Shifted.of(then, now));
            }
        }
        return new RuleShift(List.copyOf(shifted));
    }

    private static Map<String, Rule> byId(RuleBook book) {
        Map<String, Rule> rules = new LinkedHashMap<>();
        book.rules().stream().filter(rule -> !rule.afterRanking()).forEach(rule -> rules.put(rule.id(), rule));
        return rules;
    }

    /** Everything of a rule that can move a verdict: its sentences and the values of their limits. */
    private static List<String> logic(Rule rule) {
        List<String> logic = new ArrayList<>();
        for (Condition condition : rule.conditions()) {
            logic.add(condition.sentence());
            if (condition instanceof Condition.OnOption own) {
                logic.add(values(own.limits()));
            }
        }
        logic.add(conclusion(rule));
        return logic;
    }

    private static String conclusion(Rule rule) {
        return rule.conclusion().sentence() + " " + values(rule.conclusion().limits());
    }

    private static String values(List<Quantity> limits) {
        return limits.stream().map(Quantity::value).toList().toString();
    }

    /** Whether nothing can turn at all. */
    public boolean none() {
        return shifted.isEmpty();
    }

    /** Number of rules that are not the same. */
    public int size() {
        return shifted.size();
    }

    /** Whether any rule can say something else of an option. */
    public boolean mayTurn(OptionFacts facts) {
        for (Shifted one : shifted) {
            if (one.mayTurn(facts)) {
                return true;
            }
        }
        return false;
    }

    /** Whether what a search for a heat setting finds could make any rule turn for an option. */
    public boolean restsOnHeat(OptionFacts withoutHeat) {
        return shifted.stream().anyMatch(one -> one.restsOnHeat(withoutHeat));
    }
}
