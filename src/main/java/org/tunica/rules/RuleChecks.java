package org.tunica.rules;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Nearest;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.Knowledge;

/** Checks of whole rules: stage, prefix and class fit the conclusion; sources, changes and findings exist; no number. */
final class RuleChecks {
    static final int MOST_CONDITIONS = 5;
    /** What is the same for every option of a segment, by the start of the id. */
    private static final List<String> OF_SEGMENT = List.of("patient.", "limb.", "segment.");

    private static final Pattern DIGIT = Pattern.compile("\\d");

    private final Bundle bundle;
    private final Knowledge knowledge;
    private final Faults faults;

    RuleChecks(Bundle bundle, Knowledge knowledge, Faults faults) {
        this.bundle = bundle;
        this.knowledge = knowledge;
        this.faults = faults;
    }

    void check(List<Rule> rules) {
        Map<String, String> places = new HashMap<>();
        for (Rule rule : rules) {
            String earlier = places.putIfAbsent(rule.id(), rule.place());
            if (earlier != null) {
                faults.add(rule.place(), rule.id() + " stands already at " + earlier);
            }
            form(rule);
            origin(rule);
            conditions(rule);
            noNumber(rule, "the title", rule.title());
            noNumber(rule, "the reason", rule.because());
        }
        findings(rules);
        changesNameTheirRules(rules);
    }

    private void form(Rule rule) {
        Conclusion.Kind kind = rule.conclusion().kind();
        if (!rule.place().startsWith("rules/" + kind.folder() + "/")) {
            faults.add(
                    rule.place(),
                    rule.id() + " concludes \"" + kind.sentence() + "\" and belongs into rules/" + kind.folder());
        }
        if (!rule.id().startsWith(kind.prefix())) {
            faults.add(rule.place(), rule.id() + " must start with " + kind.prefix());
        }
        if (!rule.ruleClass().equals(kind.ruleClass())) {
            faults.add(
                    rule.place(),
                    rule.id() + " must be of class " + kind.ruleClass() + ", is of class " + rule.ruleClass());
        }
    }

    private void origin(Rule rule) {
        for (String source : rule.sources()) {
            if (!knowledge.sources().containsKey(source)) {
                faults.add(
                        rule.place(),
                        "there is no source " + source
                                + Nearest.hint(source, knowledge.sources().keySet()));
            }
        }
        String retiredBy = knowledge.retired().get(rule.id());
        if (retiredBy != null) {
            faults.add(
                    rule.place(),
                    rule.id() + " was retired by change " + retiredBy
                            + "; an id is never used again, so give the rule another");
        }
        ChangeRecord change = knowledge.changes().get(rule.change());
        if (change == null) {
            faults.add(rule.place(), "there is no change record " + rule.change());
        } else if (!change.rules().contains(rule.id())) {
            faults.add(rule.place(), "change " + rule.change() + " does not list " + rule.id() + " under rules");
        }
    }

    private void conditions(Rule rule) {
        if (rule.conditions().size() > MOST_CONDITIONS) {
            faults.add(
                    rule.place(),
                    rule.id() + " has more than " + MOST_CONDITIONS
                            + " conditions: find a word for some of them first");
        }
        boolean needs = rule.conclusion().kind() == Conclusion.Kind.MEASURE_FIRST;
        boolean unrecorded = rule.conditions().stream().anyMatch(Condition.Unrecorded.class::isInstance);
        if (needs != unrecorded) {
            faults.add(
                    rule.place(),
                    "\"is not recorded\" and \"then measure first\" go together: what is unknown must never count in favour");
        }
        earlierStagesOnly(rule);
        rankingOnlyAfterIt(rule);
    }

    /** No circle: what a ranking rests on may not ask for it, and what asks for it says nothing of one option. */
    private void rankingOnlyAfterIt(Rule rule) {
        for (Condition condition : rule.conditions()) {
            String field =
                    condition instanceof Condition.OnOption on ? on.field().id() : "";
            boolean ofRanking = field.startsWith(RankingFields.PREFIX);
            if (ofRanking && !rule.afterRanking()) {
                faults.add(
                        rule.place(),
                        rule.id() + " asks \"" + condition.sentence()
                                + "\", which is known only after the ranking; only rules/"
                                + Conclusion.Kind.MEET.folder() + " may ask that");
            } else if (rule.afterRanking() && !ofRanking && OF_SEGMENT.stream().noneMatch(field::startsWith)) {
                faults.add(
                        rule.place(),
                        rule.id() + " asks \"" + condition.sentence()
                                + "\"; a rule after the ranking asks about patient, leg, segment and ranking, not about one"
                                + " option");
            }
        }
    }

    private void earlierStagesOnly(Rule rule) {
        int stage = rule.conclusion().kind().stage();
        if (stage == Conclusion.Kind.FIND.stage() && !rule.onFindings().isEmpty()) {
            faults.add(rule.place(), rule.id() + " rests a finding on a finding; a rule looks at earlier stages only");
        }
        rule.conditions().stream()
                .filter(Condition.Earlier.class::isInstance)
                .map(Condition.Earlier.class::cast)
                .filter(condition -> condition.kind().stage() >= stage)
                .forEach(condition -> faults.add(
                        rule.place(),
                        rule.id() + " asks whether \"" + condition.sentence()
                                + "\", which is not settled yet; a rule looks at earlier stages only"));
    }

    private void noNumber(Rule rule, String where, String text) {
        String rest = text;
        for (String technique : knowledge.techniques().keySet()) {
            rest = rest.replace(technique, "");
        }
        if (DIGIT.matcher(rest).find()) {
            faults.add(rule.place(), where + " of " + rule.id() + " holds a number; numbers stand in knowledge/limits");
        }
    }

    private void findings(List<Rule> rules) {
        Set<String> given = rules.stream()
                .map(Rule::conclusion)
                .filter(Conclusion.Find.class::isInstance)
                .map(conclusion -> ((Conclusion.Find) conclusion).finding())
                .collect(Collectors.toSet());
        for (Rule rule : rules) {
            rule.onFindings().stream()
                    .filter(condition -> !given.contains(condition.finding()))
                    .forEach(condition -> faults.add(
                            rule.place(),
                            "no rule finds " + condition.finding() + ", so " + rule.id() + " could never tell"));
        }
    }

    private String place(ChangeRecord change) {
        String start = "rules/changes/" + change.number() + "-";
        return bundle.under(start, ".yaml").keySet().stream().findFirst().orElse(start) + ": rules";
    }

    private void neverWas(ChangeRecord change, String id) {
        if (knowledge.retired().getOrDefault(id, "").compareTo(change.number()) <= 0) {
            faults.add(place(change), "lists " + id + ", which is no rule");
        }
    }

    private void changesNameTheirRules(List<Rule> rules) {
        Map<String, Rule> byId = new HashMap<>();
        rules.forEach(rule -> byId.put(rule.id(), rule));
        for (ChangeRecord change : knowledge.changes().values()) {
            for (String id : change.rules()) {
                Rule rule = byId.get(id);
                if (rule == null) {
                    neverWas(change, id);
                } else if (rule.change().compareTo(change.number()) < 0) {
                    faults.add(place(change), "lists " + id + ", which names change " + rule.change());
                }
            }
        }
    }
}
