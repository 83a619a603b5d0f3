package org.tunica.rules;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Nearest;
import org.tunica.knowledge.Conflict;
import org.tunica.knowledge.Knowledge;

/** Checks what the ledgers of evidence, conflicts and hazards say of rules: they exist and do what is told of them. */
final class EvidenceChecks {
    private static final Map<Conflict.Does, Set<Conclusion.Kind>> CONCLUDES = Map.of(
            Conflict.Does.BARS, Set.of(Conclusion.Kind.EXCLUDE),
            Conflict.Does.WARNS, Set.of(Conclusion.Kind.CAUTION),
            Conflict.Does.COUNTS, Set.of(Conclusion.Kind.PREFER, Conclusion.Kind.DISFAVOUR),
            Conflict.Does.SETS, Set.of(Conclusion.Kind.SET));

    private final Knowledge knowledge;
    private final Map<String, Rule> rules;
    private final Faults faults;

    EvidenceChecks(Knowledge knowledge, List<Rule> rules, Faults faults) {
        this.knowledge = knowledge;
        this.rules = rules.stream().collect(Collectors.toMap(Rule::id, Function.identity(), (one, other) -> one));
        this.faults = faults;
    }

    void check() {
        knowledge
                .evidence()
                .forEach((id, evidence) -> evidence.rules().forEach(rule -> exists("knowledge/evidence: " + id, rule)));
        hazards();
        knowledge.conflicts().forEach((id, conflict) -> conflict.steps().forEach(step -> step(id, step)));
    }

    /** A rule controls hazards that are listed, and each of those is controlled by a rule or held by the program. */
    private void hazards() {
        Set<String> controlled = new TreeSet<>();
        for (Rule rule : rules.values()) {
            for (String hazard : rule.hazards()) {
                controlled.add(hazard);
                if (!knowledge.hazards().containsKey(hazard)) {
                    faults.add(
                            rule.place(),
                            "there is no hazard " + hazard
                                    + Nearest.hint(hazard, knowledge.hazards().keySet()));
                }
            }
        }
        knowledge.hazards().values().stream()
                .filter(hazard -> hazard.held().isEmpty() && !controlled.contains(hazard.id()))
                .forEach(hazard -> faults.add(
                        "knowledge/hazards.yaml: " + hazard.id(),
                        "no rule controls it and nothing says how it is held"));
    }

    private void step(String id, Conflict.Step step) {
        String place = "knowledge/conflicts.yaml: " + id;
        for (String name : step.rules()) {
            if (exists(place, name)) {
                doesIt(place, step, rules.get(name));
            }
        }
    }

    private void doesIt(String place, Conflict.Step step, Rule rule) {
        if (!CONCLUDES.get(step.does()).contains(rule.conclusion().kind())) {
            faults.add(
                    place,
                    rule.id() + " " + step.does().word() + " here, but concludes \""
                            + rule.conclusion().sentence() + "\"");
        }
        step.at()
                .filter(limit -> !limitsBehind(rule).contains(limit))
                .ifPresent(limit -> faults.add(place, rule.id() + " does not name limit " + limit));
    }

    /** The limits a rule names, itself or through a finding it asks for. */
    private Set<String> limitsBehind(Rule rule) {
        Set<String> limits = new TreeSet<>(rule.limitIds());
        for (Condition.Found asked : rule.onFindings()) {
            rules.values().stream()
                    .filter(other -> other.conclusion().equals(new Conclusion.Find(asked.finding())))
                    .forEach(other -> limits.addAll(other.limitIds()));
        }
        return limits;
    }

    private boolean exists(String place, String rule) {
        boolean known = rules.containsKey(rule);
        if (!known) {
            faults.add(place, "there is no rule " + rule + Nearest.hint(rule, rules.keySet()));
        }
        return known;
    }
}
