package org.tunica.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Quantity;

/**
 * Finds the rules that would turn had one number lain on the other side of a limit close by.
 *
 * <p>The number alone is moved, in the facts, and the engine judges again; numbers computed from it stay as they are. So a
 * near miss speaks of the number a rule asks for, not of the measurements behind it.
 */
final class NearMisses {
    private final Map<String, GlossaryField> fields = new HashMap<>();
    private final Map<String, Set<Quantity>> limits = new HashMap<>();

    /** The rules that compare a field, by its id. */
    private final Map<String, Set<Rule>> comparing = new HashMap<>();

    private final DroolsEngine engine;
    private final double nearShare;

    /** @param nearShare how far from a limit, as a share of it, a number is still close */
    NearMisses(List<Rule> rules, DroolsEngine engine, double nearShare) {
        this.engine = engine;
        this.nearShare = nearShare;
        for (Rule rule : rules) {
            for (Condition.OnOption condition : rule.onOption()) {
                if (!(condition instanceof Condition.Elsewhere)
                        && !condition.limits().isEmpty()) {
                    fields.put(condition.field().id(), condition.field());
                    limits.computeIfAbsent(condition.field().id(), id -> new LinkedHashSet<>())
                            .addAll(condition.limits());
                    comparing
                            .computeIfAbsent(condition.field().id(), id -> new LinkedHashSet<>())
                            .add(rule);
                }
            }
        }
    }

    List<NearMiss> of(Collection<OptionFacts> options, List<Verdict> verdicts) {
        Map<OptionKey, List<Verdict>> before = byOption(verdicts);
        List<NearMiss> found = new ArrayList<>();
        moves(options).forEach((move, moved) -> {
            List<OptionFacts> changed =
                    moved.stream().map(facts -> moved(facts, move)).toList();
            Map<OptionKey, List<Verdict>> after = byOption(engine.judge(changed));
            moved.forEach(facts -> turned(
                    facts,
                    move,
                    before.getOrDefault(facts.key(), List.of()),
                    after.getOrDefault(facts.key(), List.of()),
                    found));
        });
        return nearest(found);
    }

    /** Which options to judge again with which number, so that like moves share one run of the engine. */
    private Map<Move, List<OptionFacts>> moves(Collection<OptionFacts> options) {
        Map<Move, List<OptionFacts>> moves = new LinkedHashMap<>();
        for (OptionFacts facts : options) {
            limits.forEach((fieldId, bounds) -> {
                if (facts.answer(fields.get(fieldId)) instanceof Answer.Number number) {
                    bounds.stream()
                            .filter(limit -> near(number.value(), limit.value()))
                            .flatMap(limit -> targets(number.value(), limit.value()).stream()
                                    .map(to -> new Move(fieldId, limit, to)))
                            .filter(move -> mayTurn(facts, move))
                            .forEach(move -> moves.computeIfAbsent(move, key -> new ArrayList<>())
                                    .add(facts));
                }
            });
        }
        return moves;
    }

    /**
     * Whether any rule can turn: one that compares the number must come to another truth, and none of its other conditions
     * fail. Most moves need no run of the engine for it.
     */
    private boolean mayTurn(OptionFacts facts, Move move) {
        OptionFacts moved = moved(facts, move);
        return comparing.get(move.fieldId()).stream().anyMatch(rule -> {
            boolean turns = false;
            for (Condition.OnOption condition : rule.onOption()) {
                Truth after = condition.truth(moved);
                if (after == condition.truth(facts)) {
                    if (after == Truth.FALSE) {
                        return false;
                    }
                } else {
                    turns = true;
                }
            }
            return turns;
        });
    }

    private OptionFacts moved(OptionFacts facts, Move move) {
        return facts.with(fields.get(move.fieldId()), new Answer.Number(move.to()));
    }

    private boolean near(double value, double limit) {
        return Math.abs(value - limit) <= nearShare * Math.abs(limit);
    }

    /** The limit itself and the first number beyond it; from the limit, the first on either side. */
    private static List<Double> targets(double value, double limit) {
        if (value == limit) {
            return List.of(Math.nextDown(limit), Math.nextUp(limit));
        }
        return List.of(limit, value > limit ? Math.nextDown(limit) : Math.nextUp(limit));
    }

    private void turned(OptionFacts facts, Move move, List<Verdict> before, List<Verdict> after, List<NearMiss> found) {
        Set<Rule> then = speaking(before);
        Set<Rule> now = speaking(after);
        Set<Rule> either = new LinkedHashSet<>(then);
        either.addAll(now);
        GlossaryField field = fields.get(move.fieldId());
        double recorded = ((Answer.Number) facts.answer(field)).value();
        either.stream()
                .filter(rule -> then.contains(rule) != now.contains(rule))
                .forEach(rule -> found.add(new NearMiss(
                        facts.key(), rule, then.contains(rule), field, recorded, move.limit(), move.to(), after)));
    }

    private static Map<OptionKey, List<Verdict>> byOption(List<Verdict> verdicts) {
        return verdicts.stream().collect(Collectors.groupingBy(Verdict::option));
    }

    private static Set<Rule> speaking(List<Verdict> verdicts) {
        return verdicts.stream()
                .filter(Verdict::speaks)
                .map(Verdict::rule)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** On its way to a further limit a number crosses the nearer one: told is where the rule turns first. */
    private static List<NearMiss> nearest(List<NearMiss> found) {
        Map<List<Object>, NearMiss> nearest = new LinkedHashMap<>();
        for (NearMiss miss : found) {
            List<Object> same =
                    List.of(miss.option(), miss.rule().id(), miss.field().id(), miss.turnsAt() < miss.recorded());
            nearest.merge(same, miss, (a, b) -> way(a) <= way(b) ? a : b);
        }
        return List.copyOf(nearest.values());
    }

    private static double way(NearMiss miss) {
        return Math.abs(miss.turnsAt() - miss.recorded());
    }

    private record Move(String fieldId, Quantity limit, double to) {}
}
