package org.tunica.mutation;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;

/** Every mutant of some rules and of the limits they name, one wrong thing each. */
final class Mutants {
    /** A tenth more and a tenth less. */
    private static final List<BigDecimal> FACTORS = List.of(new BigDecimal("1.1"), new BigDecimal("0.9"));

    private final Knowledge knowledge;
    private final List<Rule> rules;

    /** Mutants made of these rules: each holds all of them but for the one wrong thing. */
    Mutants(Knowledge knowledge, List<Rule> rules) {
        this.knowledge = knowledge;
        this.rules = rules;
    }

    /** Every mutant of every rule and limit. */
    Stream<Mutant> all() {
        return Stream.concat(
                rules.stream().flatMap(rule -> ofRule(rule).stream()),
                rules.stream()
                        .flatMap(rule -> rule.limitIds().stream())
                        .distinct()
                        .sorted()
                        .flatMap(id -> ofLimit(id).stream()));
    }

    private List<Mutant> ofRule(Rule rule) {
        List<Mutant> mutants = new ArrayList<>();
        mutants.add(mutant(rule, "deleted", List.of()));
        for (Condition condition : rule.conditions()) {
            if (rule.conditions().size() > 1) {
                mutants.add(mutant(
                        rule,
                        "lacks \"" + condition.sentence() + "\"",
                        List.of(with(rule, without(rule, condition, List.of()), rule.conclusion()))));
            }
            ConditionMutants.of(condition)
                    .forEach((what, instead) -> mutants.add(mutant(
                            rule,
                            what + " for \"" + condition.sentence() + "\"",
                            List.of(with(rule, without(rule, condition, instead), rule.conclusion())))));
        }
        for (Conclusion conclusion : ConclusionMutants.of(rule.conclusion(), knowledge)) {
            mutants.add(mutant(
                    rule,
                    "concludes \"" + conclusion.sentence() + "\" for \""
                            + rule.conclusion().sentence() + "\"",
                    List.of(with(rule, rule.conditions(), conclusion))));
        }
        return mutants;
    }

    /** A tenth up and down, and one in the last digit given. */
    private List<Mutant> ofLimit(String id) {
        BigDecimal value = BigDecimal.valueOf(knowledge.value(id)).stripTrailingZeros();
        BigDecimal hair = BigDecimal.ONE.movePointLeft(Math.max(0, value.scale()));
        Set<BigDecimal> moved = new LinkedHashSet<>();
        FACTORS.forEach(factor -> moved.add(value.multiply(factor).stripTrailingZeros()));
        moved.add(value.add(hair).stripTrailingZeros());
        moved.add(value.subtract(hair).stripTrailingZeros());
        moved.remove(value);
        List<String> about = rules.stream()
                .filter(rule -> rule.limitIds().contains(id))
                .map(Rule::id)
                .toList();
        return moved.stream()
                .map(other -> new Mutant(
                        about,
                        "limit " + id + " is " + other.toPlainString() + " for " + value.toPlainString(),
                        rules,
                        moved(id, other.doubleValue())))
                .toList();
    }

    private Knowledge moved(String id, double value) {
        Quantity limit = knowledge.quantity(id);
        Map<String, Quantity> quantities = new TreeMap<>(knowledge.quantities());
        quantities.put(
                id, new Quantity(id, limit.says(), value, limit.low(), limit.high(), limit.unit(), limit.provenance()));
        return Altered.knowledge(knowledge, quantities, knowledge.changes());
    }

    private Mutant mutant(Rule rule, String what, List<Rule> instead) {
        List<Rule> mutated = new ArrayList<>();
        rules.forEach(other -> mutated.addAll(other == rule ? instead : List.of(other)));
        return new Mutant(List.of(rule.id()), what, mutated, knowledge);
    }

    private static List<Condition> without(Rule rule, Condition condition, List<Condition> instead) {
        List<Condition> conditions = new ArrayList<>();
        rule.conditions().forEach(other -> conditions.addAll(other == condition ? instead : List.of(other)));
        return conditions;
    }

    private static Rule with(Rule rule, List<Condition> conditions, Conclusion conclusion) {
        return new Rule(
                rule.id(),
                rule.title(),
                rule.sources(),
                rule.standing(),
                rule.change(),
                rule.reviewBy(),
                rule.ruleClass(),
                rule.hazards(),
                conditions,
                conclusion,
                rule.because(),
                rule.place());
    }
}
