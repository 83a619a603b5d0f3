package org.tunica.review;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Source;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;

/** One rule in print: its sentence with the numbers put in, and beside it everything it rests on. */
final class RulePrint {
    private static final Pattern LIMIT = Pattern.compile("limit ([A-Za-z0-9.-]*[A-Za-z0-9])");

    private final Knowledge knowledge;

    RulePrint(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    static String heading(Rule rule) {
        return rule.id() + " " + rule.title();
    }

    /** A link to a rule, by its id. */
    static Ink link(Rule rule) {
        return Ink.link(rule.id(), heading(rule));
    }

    void write(Rule rule, Markdown page) {
        page.heading(4, heading(rule));
        page.paragraph(sentence(rule));
        List<Ink> beside = new ArrayList<>();
        rule.limitIds().forEach(id -> beside.add(limit(knowledge.quantity(id))));
        beside.add(labelled(
                "Standing",
                rule.standing().word() + "; class " + rule.ruleClass() + "; review by " + rule.reviewBy()
                        + hazards(rule)));
        rule.sources().forEach(id -> beside.add(labelled("Source", source(knowledge.source(id)))));
        beside.add(labelled("Change", change(knowledge.changes().get(rule.change()))));
        page.bullets(beside);
    }

    /** The rule as one sentence, conditions, conclusion and reason. */
    Ink sentence(Rule rule) {
        List<Ink> parts = new ArrayList<>();
        for (Condition condition : rule.conditions()) {
            parts.add(Ink.strong(parts.isEmpty() ? "When" : "and"));
            parts.add(Ink.text(" " + withNumbers(condition.sentence()) + " "));
        }
        parts.add(Ink.strong("then"));
        parts.add(Ink.text(" " + withNumbers(rule.conclusion().sentence()) + ", "));
        parts.add(Ink.strong("because"));
        parts.add(Ink.text(" " + rule.because() + "."));
        return Ink.of(parts.toArray(Ink[]::new));
    }

    /** The sentence in one line of plain text, numbers put in. */
    String plainly(Rule rule) {
        return "when "
                + rule.conditions().stream()
                        .map(condition -> withNumbers(condition.sentence()))
                        .collect(Collectors.joining(" and "))
                + ", then " + withNumbers(rule.conclusion().sentence());
    }

    private String withNumbers(String sentence) {
        return LIMIT.matcher(sentence).replaceAll(found -> number(found));
    }

    private String number(MatchResult found) {
        Quantity limit = knowledge.quantities().get(found.group(1));
        return limit == null ? found.group() : Figures.with(limit.value(), limit.unit());
    }

    private static Ink limit(Quantity limit) {
        String range = Figures.range(limit.low(), limit.high(), limit.unit());
        return Ink.of(
                Ink.strong(Figures.with(limit.value(), limit.unit())),
                Ink.text(": " + limit.says() + (range.isEmpty() ? "" : " (source gives " + range + ")") + "; "
                        + limit.provenance().standing().word() + ", "
                        + limit.provenance().source() + "; limit " + limit.id()));
    }

    private static Ink labelled(String label, String text) {
        return Ink.of(Ink.strong(label + ":"), Ink.text(" " + text));
    }

    private String hazards(Rule rule) {
        return rule.hazards().stream()
                .map(id ->
                        "; controls " + id + ", " + knowledge.hazards().get(id).hazard())
                .collect(Collectors.joining());
    }

    static String source(Source source) {
        return source.id() + ", " + source.cites() + " (read: " + source.read().word() + ")";
    }

    static String change(ChangeRecord change) {
        return change.number() + ", " + change.title() + " (" + change.status().word() + "; " + signed(change) + ")";
    }

    static String signed(ChangeRecord change) {
        return change.approvers().isEmpty()
                ? "approved by nobody"
                : "approved by "
                        + change.approvers().stream()
                                .map(person -> person.initials() + ", " + person.role())
                                .collect(Collectors.joining("; "));
    }
}
