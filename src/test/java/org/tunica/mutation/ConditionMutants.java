package org.tunica.mutation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tunica.rules.Condition;
import org.tunica.rules.Condition.Comparison;

/** Every way to get one condition wrong: what to write in its place, by what was done. */
final class ConditionMutants {
    private final Map<String, List<Condition>> mutants = new LinkedHashMap<>();

    private ConditionMutants() {}

    static Map<String, List<Condition>> of(Condition condition) {
        ConditionMutants all = new ConditionMutants();
        if (condition instanceof Condition.Compared compared) {
            all.compared(compared);
        } else if (condition instanceof Condition.Between between) {
            all.between(between);
        } else if (condition instanceof Condition.AmongWords word) {
            all.put(new Condition.AmongWords(word.field(), !word.among(), word.words()));
            fewer(word.words()).forEach(words -> all.put(new Condition.AmongWords(word.field(), word.among(), words)));
        } else if (condition instanceof Condition.AnyOf set) {
            all.put(new Condition.AnyOf(set.field(), !set.any(), set.words()));
            fewer(set.words()).forEach(words -> all.put(new Condition.AnyOf(set.field(), set.any(), words)));
        } else if (condition instanceof Condition.Holds flag) {
            all.put(new Condition.Holds(flag.field(), !flag.wanted()));
        } else if (condition instanceof Condition.Found finding) {
            all.put(new Condition.Found(finding.finding(), !finding.wanted()));
        } else if (condition instanceof Condition.Earlier earlier) {
            all.put(new Condition.Earlier(earlier.kind(), !earlier.wanted()));
        } else if (condition instanceof Condition.Elsewhere elsewhere) {
            all.elsewhere(elsewhere);
        }
        return all.mutants;
    }

    /** The other direction, the other strictness, and both. */
    private void compared(Condition.Compared compared) {
        for (Comparison other : Comparison.values()) {
            if (other != compared.comparison()) {
                put(new Condition.Compared(compared.field(), other, compared.limit()));
            }
        }
    }

    private void between(Condition.Between between) {
        Condition atLeastLow = new Condition.Compared(between.field(), Comparison.AT_LEAST, between.low());
        Condition overLow = new Condition.Compared(between.field(), Comparison.MORE, between.low());
        Condition atMostHigh = new Condition.Compared(between.field(), Comparison.AT_MOST, between.high());
        Condition underHigh = new Condition.Compared(between.field(), Comparison.LESS, between.high());
        put(atLeastLow);
        put(atMostHigh);
        put(overLow, atMostHigh);
        put(atLeastLow, underHigh);
        put(new Condition.Between(between.field(), !between.within(), between.low(), between.high()));
    }

    /** The other way round, this very segment, and every way to get wrong what is asked of the other one. */
    private void elsewhere(Condition.Elsewhere elsewhere) {
        put(new Condition.Elsewhere(!elsewhere.wanted(), elsewhere.condition()));
        put(elsewhere.condition());
        of(elsewhere.condition())
                .values()
                .forEach(instead -> put(instead.stream()
                        .map(inner ->
                                (Condition) new Condition.Elsewhere(elsewhere.wanted(), (Condition.OnOption) inner))
                        .toArray(Condition[]::new)));
    }

    private static List<List<String>> fewer(List<String> words) {
        List<List<String>> fewer = new ArrayList<>();
        for (String dropped : words.size() < 2 ? List.<String>of() : words) {
            fewer.add(words.stream().filter(word -> !word.equals(dropped)).toList());
        }
        return fewer;
    }

    private void put(Condition... instead) {
        List<Condition> conditions = List.of(instead);
        mutants.put(
                "reads \""
                        + String.join(
                                " and ",
                                conditions.stream().map(Condition::sentence).toList()) + "\"",
                conditions);
    }
}
