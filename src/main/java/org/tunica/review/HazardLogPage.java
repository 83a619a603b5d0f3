package org.tunica.review;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tunica.knowledge.Hazard;
import org.tunica.knowledge.IntendedUse;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Rule;

/** The hazard log: what the program is for, what could go wrong, what holds it and which scenario shows that it does. */
final class HazardLogPage {
    static final String TITLE = "Hazard log";

    private final Knowledge knowledge;
    private final List<Rule> rules;
    private final RulePrint print;
    private final Markdown page = new Markdown();

    HazardLogPage(Knowledge knowledge, List<Rule> rules) {
        this.knowledge = knowledge;
        this.rules = rules;
        this.print = new RulePrint(knowledge);
    }

    String of(List<Scenario> scenarios) {
        page.heading(1, TITLE);
        intendedUse(knowledge.intendedUse());
        overview(scenarios);
        page.heading(2, "Hazards");
        knowledge.hazards().values().forEach(hazard -> hazard(hazard, scenarios));
        return page.text();
    }

    private void intendedUse(IntendedUse use) {
        page.heading(2, "What the program is for");
        page.paragraph(Ink.strong(use.says()));
        list("Who may use it", use.users());
        list("When", use.uses());
        list("What it is not for", use.notFor());
        list("Known limits", use.limits());
    }

    private void list(String heading, List<String> texts) {
        page.heading(3, heading);
        page.bullets(texts.stream().map(Ink::text).toList());
    }

    private void overview(List<Scenario> scenarios) {
        page.heading(2, "Overview");
        page.paragraph(
                "A control is a rule whose sentence bars, warns, asks for a measurement or otherwise holds the hazard, "
                        + "or what the program does by itself. How much risk remains is left for the deploying site to judge.");
        page.table(
                List.of("hazard", "what goes wrong", "rules", "scenarios"),
                knowledge.hazards().values().stream()
                        .map(hazard -> List.of(
                                Ink.link(hazard.id(), heading(hazard)),
                                Ink.text(hazard.hazard()),
                                Ink.text(String.valueOf(controls(hazard).size())),
                                Ink.text(String.valueOf(scenarios.stream()
                                        .filter(scenario -> shows(scenario, hazard))
                                        .count()))))
                        .toList());
    }

    private static String heading(Hazard hazard) {
        return hazard.id() + " " + hazard.hazard();
    }

    private void hazard(Hazard hazard, List<Scenario> scenarios) {
        page.heading(3, heading(hazard));
        List<Ink> facts = new ArrayList<>();
        facts.add(labelled("Cause", hazard.cause()));
        facts.add(labelled("Effect", hazard.effect()));
        hazard.held().ifPresent(held -> facts.add(labelled("Held by the program", held)));
        facts.add(labelled("What the controls cannot do", hazard.limits()));
        facts.add(labelled("Residual risk", "left for the deploying site to judge"));
        page.bullets(facts);
        List<Scenario> whole = scenarios.stream()
                .filter(scenario -> scenario.tags().contains(hazard.id()))
                .toList();
        if (!whole.isEmpty()) {
            page.paragraph("Scenarios of the whole advice:");
            page.bullets(
                    whole.stream().map(scenario -> Ink.text(scenario.title())).toList());
        }
        controls(hazard, scenarios);
    }

    private void controls(Hazard hazard, List<Scenario> scenarios) {
        List<Rule> controls = controls(hazard);
        if (controls.isEmpty()) {
            page.paragraph("No rule controls it; see what the program does by itself.");
            return;
        }
        page.table(
                List.of("rule", "control", "shown by"),
                controls.stream()
                        .map(rule -> List.of(
                                Ink.text(rule.id()),
                                Ink.text(rule.title() + ": " + print.plainly(rule)),
                                Ink.join(
                                        "; ",
                                        scenarios.stream()
                                                .filter(scenario ->
                                                        scenario.tags().contains(rule.id()))
                                                .map(scenario -> Ink.text(scenario.title()))
                                                .toList())))
                        .toList());
    }

    private List<Rule> controls(Hazard hazard) {
        return rules.stream()
                .filter(rule -> rule.hazards().contains(hazard.id()))
                .collect(Collectors.toList());
    }

    private boolean shows(Scenario scenario, Hazard hazard) {
        return scenario.tags().contains(hazard.id())
                || controls(hazard).stream().anyMatch(rule -> scenario.tags().contains(rule.id()));
    }

    private static Ink labelled(String label, String text) {
        return Ink.of(Ink.strong(label + ":"), Ink.text(" " + text));
    }
}
