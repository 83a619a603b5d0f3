package org.tunica.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;

/**
 * Whether every rule is shown by scenarios: one that hits, one that misses, one at a limit where it compares a number, and
 * one with a value unknown where one can be.
 */
final class ScenarioChecks {
    private final List<Rule> rules;
    private final Map<String, Set<String>> kinds = new HashMap<>();
    private final Map<String, String> places = new HashMap<>();

    ScenarioChecks(List<Rule> rules, List<Scenario> scenarios) {
        this.rules = rules;
        for (Scenario scenario : scenarios) {
            for (String tag : scenario.tags()) {
                kinds.computeIfAbsent(tag, id -> new TreeSet<>()).addAll(scenario.kinds());
                places.putIfAbsent(tag, scenario.place());
            }
        }
    }

    List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>();
        for (Rule rule : rules) {
            Set<String> missing = new TreeSet<>(expected(rule));
            missing.removeAll(kinds.getOrDefault(rule.id(), Set.of()));
            if (!missing.isEmpty()) {
                remarks.add(new Remark(
                        Remark.Kind.NO_SCENARIO,
                        List.of(rule.id()),
                        List.of(rule.place()),
                        rule.id() + " has no scenario of kind " + String.join(", ", missing)));
            }
        }
        Set<String> ids = new TreeSet<>();
        rules.forEach(rule -> ids.add(rule.id()));
        kinds.keySet().stream()
                .filter(tag -> tag.matches("[A-Z]{3}-\\d{3}") && !ids.contains(tag))
                .sorted()
                .forEach(tag -> remarks.add(new Remark(
                        Remark.Kind.NO_SCENARIO,
                        List.of(tag),
                        List.of("features/" + places.get(tag)),
                        "a scenario speaks of " + tag + ", which is no rule")));
        return remarks;
    }

    private static Set<String> expected(Rule rule) {
        Set<String> kinds = new TreeSet<>(Set.of("hit", "miss"));
        if (rule.onOption().stream().anyMatch(condition -> !condition.limits().isEmpty())) {
            kinds.add("limit");
        }
        boolean needs = rule.conditions().stream().anyMatch(Condition.Unrecorded.class::isInstance);
        boolean canBeUnknown = rule.onOption().stream()
                .anyMatch(condition ->
                        !Condition.ALWAYS_KNOWN.contains(condition.field().id()));
        if (canBeUnknown && !needs) {
            kinds.add("unknown");
        }
        return kinds;
    }
}
