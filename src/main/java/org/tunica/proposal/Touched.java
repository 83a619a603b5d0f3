package org.tunica.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.review.Difference;
import org.tunica.review.RuleReview;
import org.tunica.rules.Rule;

/**
 * What a change touches.
 *
 * @param differences everything that differs, in words
 * @param rules those that are new or say something else
 * @param numbers likewise
 * @param gone rules that were taken out
 */
record Touched(List<Difference> differences, List<Rule> rules, List<Quantity> numbers, List<Rule> gone) {
    Touched {
        differences = List.copyOf(differences);
        rules = List.copyOf(rules);
        numbers = List.copyOf(numbers);
        gone = List.copyOf(gone);
    }

    static Touched between(RuleReview before, RuleReview after) {
        List<Difference> differences = after.since(before);
        Map<String, Rule> is = byId(after.rules());
        Map<String, Rule> was = byId(before.rules());
        Knowledge knowledge = after.knowledge();
        return new Touched(
                differences,
                of(differences, Difference.Part.RULE, is),
                of(differences, Difference.Part.NUMBER, knowledge.quantities()),
                was.values().stream().filter(rule -> !is.containsKey(rule.id())).toList());
    }

    private static Map<String, Rule> byId(List<Rule> rules) {
        Map<String, Rule> byId = new TreeMap<>();
        rules.forEach(rule -> byId.put(rule.id(), rule));
        return byId;
    }

    private static <T> List<T> of(List<Difference> differences, Difference.Part part, Map<String, T> all) {
        return differences.stream()
                .filter(difference -> difference.part() == part)
                .map(difference -> all.get(difference.id()))
                .filter(Objects::nonNull)
                .toList();
    }

    boolean has(String ruleId) {
        return rules.stream().anyMatch(rule -> rule.id().equals(ruleId));
    }

    /** Whether anything differs but the record that tells of it. */
    boolean nothing() {
        return differences.stream().allMatch(difference -> difference.part() == Difference.Part.CHANGE_RECORD);
    }

    /** Records that are new. */
    List<String> newRecords() {
        List<String> numbers = new ArrayList<>();
        differences.stream()
                .filter(difference -> difference.part() == Difference.Part.CHANGE_RECORD)
                .filter(difference -> difference.act() == Difference.Act.ADDED)
                .forEach(difference -> numbers.add(difference.id()));
        return numbers;
    }
}
