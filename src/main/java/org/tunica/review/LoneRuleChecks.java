package org.tunica.review;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.tunica.knowledge.Measurement;
import org.tunica.knowledge.Quantity;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;

/** What can be wrong with a rule by itself: it can never speak, or one of its conditions adds nothing. */
final class LoneRuleChecks {
    private static final Set<Conclusion.Kind> HOLD_BACK = EnumSet.of(
            Conclusion.Kind.EXCLUDE,
            Conclusion.Kind.MEASURE_FIRST,
            Conclusion.Kind.NOT_IN_ROOM,
            Conclusion.Kind.CAUTION);

    private final Reasoning reasoning;
    private final boolean hazardsListed;

    LoneRuleChecks(Reasoning reasoning, boolean hazardsListed) {
        this.reasoning = reasoning;
        this.hazardsListed = hazardsListed;
    }

    List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>();
        for (Rule rule : reasoning.rules()) {
            namesItsHazard(rule, remarks);
            limitsInRange(rule, remarks);
            if (!reasoning.canSpeak(rule)) {
                remarks.add(remark(Remark.Kind.IMPOSSIBLE, rule, rule.id() + " can never speak: " + reason(rule)));
            } else {
                rule.conditions().forEach(condition -> addsNothing(rule, condition, remarks));
            }
        }
        return remarks;
    }

    /** What bars, warns or asks for a measurement does so because something could go wrong, if hazards are listed at all. */
    private void namesItsHazard(Rule rule, List<Remark> remarks) {
        if (hazardsListed
                && HOLD_BACK.contains(rule.conclusion().kind())
                && rule.hazards().isEmpty()) {
            remarks.add(remark(
                    Remark.Kind.NO_HAZARD,
                    rule,
                    rule.id() + " says \"" + rule.conclusion().sentence() + "\" and names no hazard it controls"));
        }
    }

    private void limitsInRange(Rule rule, List<Remark> remarks) {
        for (Condition.OnOption condition : rule.onOption()) {
            reasoning
                    .space()
                    .measured(condition.field().id())
                    .ifPresent(measured -> condition.limits().stream()
                            .filter(limit -> !measured.range().holds(limit.value()))
                            .forEach(limit -> remarks.add(outOfRange(rule, condition, limit, measured))));
        }
    }

    private static Remark outOfRange(Rule rule, Condition.OnOption condition, Quantity limit, Measurement measured) {
        return remark(
                Remark.Kind.OUT_OF_RANGE,
                rule,
                rule.id() + " compares " + condition.noun() + " with limit " + limit.id() + ", which is "
                        + Figures.with(limit.value(), limit.unit()) + ", but only "
                        + Figures.number(measured.range().min()) + " to "
                        + Figures.with(measured.range().max(), limit.unit()) + " may be entered at all");
    }

    /** The fewest conditions that cannot hold together: one, two, or the whole rule. */
    private String reason(Rule rule) {
        List<Condition> conditions = rule.conditions();
        for (Condition one : conditions) {
            if (!together(List.of(one))) {
                return "\"" + one.sentence() + "\" holds of no option";
            }
        }
        for (int i = 0; i < conditions.size(); i++) {
            for (int j = i + 1; j < conditions.size(); j++) {
                if (!together(List.of(conditions.get(i), conditions.get(j)))) {
                    return "\"" + conditions.get(i).sentence() + "\" and \""
                            + conditions.get(j).sentence() + "\" exclude each other";
                }
            }
        }
        return "no option meets all its conditions at once";
    }

    private boolean together(List<Condition> conditions) {
        return Reasoning.possible(reasoning.demands().of(conditions, Wish.TRUE));
    }

    private void addsNothing(Rule rule, Condition condition, List<Remark> remarks) {
        List<Condition> others =
                rule.conditions().stream().filter(other -> other != condition).toList();
        if (!Reasoning.possible(reasoning.demands().of(condition, Wish.FALSE))) {
            remarks.add(remark(
                    Remark.Kind.ALWAYS_TRUE,
                    rule,
                    rule.id() + ": \"" + condition.sentence() + "\" holds of every option for which it can be told"));
        } else if (reasoning.follows(condition, others)) {
            remarks.add(remark(
                    Remark.Kind.ALWAYS_TRUE,
                    rule,
                    rule.id() + ": \"" + condition.sentence() + "\" follows from the other conditions"));
        }
    }

    private static Remark remark(Remark.Kind kind, Rule rule, String sentence) {
        return new Remark(kind, List.of(rule.id()), List.of(rule.place()), sentence);
    }
}
