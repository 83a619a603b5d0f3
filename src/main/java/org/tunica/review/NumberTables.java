package org.tunica.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Source;
import org.tunica.rules.Rule;

/** The tables at the back of the rule book: limits, other numbers, sources, change records. */
final class NumberTables {
    /** In the order of the methods. */
    static final List<String> HEADINGS =
            List.of("Limits that rules name", "Other numbers", "Sources", "Change records");

    private static final List<String> NUMBER_HEAD = List.of("number", "what it is", "value", "standing and source");

    private final Knowledge knowledge;
    private final Map<String, List<Rule>> naming = new TreeMap<>();

    NumberTables(Knowledge knowledge, List<Rule> rules) {
        this.knowledge = knowledge;
        rules.forEach(rule -> rule.limitIds()
                .forEach(id ->
                        naming.computeIfAbsent(id, key -> new ArrayList<>()).add(rule)));
    }

    void limits(Markdown page) {
        page.heading(2, HEADINGS.get(0));
        List<String> head = new ArrayList<>(NUMBER_HEAD);
        head.add("named by");
        page.table(
                head,
                knowledge.quantities().values().stream()
                        .filter(quantity -> naming.containsKey(quantity.id()))
                        .map(quantity -> {
                            List<Ink> cells = new ArrayList<>(number(quantity));
                            cells.add(Ink.join(
                                    ", ",
                                    naming.get(quantity.id()).stream()
                                            .map(RulePrint::link)
                                            .toList()));
                            return cells;
                        })
                        .toList());
    }

    void otherNumbers(Markdown page) {
        page.heading(2, HEADINGS.get(1));
        page.paragraph("Weights of the ranking, doses and constants of the computed models; no rule names them.");
        page.table(
                NUMBER_HEAD,
                knowledge.quantities().values().stream()
                        .filter(quantity -> !naming.containsKey(quantity.id()))
                        .map(NumberTables::number)
                        .toList());
    }

    private static List<Ink> number(Quantity quantity) {
        String range = Figures.range(quantity.low(), quantity.high(), quantity.unit());
        String note = quantity.provenance().note().map(text -> "; " + text).orElse("");
        return List.of(
                Ink.text(quantity.id()),
                Ink.text(quantity.says() + note),
                Ink.text(Figures.with(quantity.value(), quantity.unit()) + (range.isEmpty() ? "" : " (" + range + ")")),
                Ink.text(quantity.provenance().standing().word() + ", "
                        + quantity.provenance().source()));
    }

    void sources(Markdown page) {
        page.heading(2, HEADINGS.get(2));
        page.table(
                List.of("source", "citation", "taken from it", "read"),
                knowledge.sources().values().stream()
                        .map(source -> Markdown.cells(
                                source.id(),
                                citation(source),
                                source.about(),
                                source.read().word()))
                        .toList());
    }

    private static String citation(Source source) {
        return source.cites() + source.doi().map(doi -> ", doi " + doi).orElse("");
    }

    void changes(Markdown page) {
        page.heading(2, HEADINGS.get(3));
        page.table(
                List.of("change", "title and reason", "status", "people", "rules"),
                knowledge.changes().values().stream()
                        .map(change -> Markdown.cells(
                                change.number(),
                                change.title() + ". " + change.reason(),
                                change.status().word() + ", effective " + change.effective(),
                                "author "
                                        + change.authors().stream()
                                                .map(person -> person.initials() + ", " + person.role())
                                                .collect(Collectors.joining("; "))
                                        + "; " + RulePrint.signed(change),
                                String.join(", ", change.rules())))
                        .toList());
    }
}
