package org.tunica.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tunica.rules.Condition;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.Rule;
import org.tunica.rules.RuleBook;
import org.tunica.rules.Verdict;

/**
 * Makes up facts at every boundary of every rule: all conditions hold; one is broken; one cannot be told; a number lies
 * just below, at and just above each limit while all else holds.
 */
final class Prober {
    private final Reasoning reasoning;
    private final List<Probe> probes = new ArrayList<>();
    private final List<Probe.Unprobed> unprobed = new ArrayList<>();

    Prober(Reasoning reasoning) {
        this.reasoning = reasoning;
        reasoning.rules().forEach(this::probe);
    }

    List<Probe> probes() {
        return List.copyOf(probes);
    }

    List<Probe.Unprobed> unprobed() {
        return List.copyOf(unprobed);
    }

    /** What the engine says of each probe, all in one run. */
    List<Probe.Outcome> outcomes(RuleBook book) {
        Map<String, Probe.Says> said = new HashMap<>();
        List<OptionFacts> options = probes.stream().map(Probe::option).toList();
        List<Verdict> verdicts = new ArrayList<>(book.judge(options));
        verdicts.addAll(book.signs(options));
        for (Verdict verdict : verdicts) {
            said.put(
                    verdict.option().segmentRef() + verdict.rule().id(),
                    verdict.speaks() ? Probe.Says.SPEAKS : Probe.Says.IS_IN_DOUBT);
        }
        return probes.stream()
                .map(probe -> new Probe.Outcome(
                        probe,
                        said.getOrDefault(probe.option().key().segmentRef() + probe.rule(), Probe.Says.STAYS_QUIET)))
                .toList();
    }

    private void probe(Rule rule) {
        if (!reasoning.canSpeak(rule)) {
            unprobed.add(new Probe.Unprobed(rule.id(), "all conditions hold", "the rule can never speak"));
            return;
        }
        add(
                rule,
                "all conditions hold",
                null,
                Probe.Says.SPEAKS,
                reasoning.demands().of(rule, Wish.TRUE));
        for (Condition condition : rule.conditions()) {
            Demand rest = reasoning
                    .demands()
                    .of(
                            rule.conditions().stream()
                                    .filter(other -> other != condition)
                                    .toList(),
                            Wish.TRUE);
            broken(rule, condition, rest);
            untold(rule, condition, rest);
            edges(rule, condition, rest);
        }
    }

    private void broken(Rule rule, Condition condition, Demand rest) {
        Demand broken = reasoning.demands().of(condition, Wish.FALSE);
        String what = "not: " + condition.sentence();
        if (!add(rule, what, null, Probe.Says.STAYS_QUIET, rest, broken)) {
            String why = Reasoning.possible(broken)
                    ? "it follows from the other conditions"
                    : "it holds of every option for which it can be told";
            unprobed.add(new Probe.Unprobed(rule.id(), what, why));
        }
    }

    /** Where nothing can be missing there is no doubt to probe. */
    private void untold(Rule rule, Condition condition, Demand rest) {
        add(
                rule,
                "not known: " + condition.sentence(),
                null,
                Probe.Says.IS_IN_DOUBT,
                rest,
                reasoning.demands().of(condition, Wish.NOT_TRUE),
                reasoning.demands().of(condition, Wish.NOT_FALSE));
    }

    private void edges(Rule rule, Condition condition, Demand rest) {
        if (condition instanceof Condition.Elsewhere elsewhere) {
            Edge.of(elsewhere.condition()).forEach(edge -> edge(rule, elsewhere, edge, rest));
        } else if (condition instanceof Condition.OnOption onOption) {
            Edge.of(onOption).forEach(edge -> edge(rule, onOption, edge, rest));
        }
    }

    private void edge(Rule rule, Condition.OnOption condition, Edge edge, Demand rest) {
        Variable variable = reasoning.space().variable(condition.field().id());
        int cell = edge.cell(variable);
        String what = condition.noun() + " " + edge.words();
        if (cell < 0) {
            unprobed.add(new Probe.Unprobed(rule.id(), what, "no such number may be entered"));
            return;
        }
        Demand.Fits fits = Reasoning.at(variable, cell);
        Demand here = condition instanceof Condition.Elsewhere ? new Demand.Somewhere(fits) : fits;
        boolean holds = !(condition instanceof Condition.Elsewhere elsewhere) || elsewhere.wanted()
                ? edge.inside()
                : !edge.inside();
        Probe.Says expected = holds ? Probe.Says.SPEAKS : Probe.Says.STAYS_QUIET;
        Demand meant = reasoning.demands().of(condition, holds ? Wish.TRUE : Wish.FALSE);
        if (!add(rule, what, new MadeUpFacts.Sharp(variable, cell, edge), expected, rest, here, meant)) {
            unprobed.add(new Probe.Unprobed(rule.id(), what, "the other conditions rule it out"));
        }
    }

    private boolean add(
            Rule rule, String what, MadeUpFacts.@Nullable Sharp sharp, Probe.Says expected, Demand... wanted) {
        Optional<Search.Found> found = Reasoning.find(wanted);
        found.ifPresent(where -> {
            MadeUpFacts facts = new MadeUpFacts(reasoning.space(), where, sharp);
            probes.add(
                    new Probe(rule.id(), what, facts.words(), facts.option(String.valueOf(probes.size())), expected));
        });
        return found.isPresent();
    }
}
