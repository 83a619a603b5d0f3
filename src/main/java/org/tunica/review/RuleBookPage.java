package org.tunica.review;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Standing;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Rule;

/** The rule book: every rule and every number of a release, in print, for the people who sign it. */
final class RuleBookPage {
    static final String TITLE = "Rule book";
    private static final Map<Integer, String> STAGES = new TreeMap<>(Map.of(
            1, "Stage 1: findings",
            2, "Stage 2: exclusions, needs and what the room lacks",
            3, "Stage 3: cautions",
            4, "Stage 4: preferences",
            5, "Stage 5: settings",
            6, "Stage 6: signs of a hard case"));

    private final Bundle bundle;
    private final Knowledge knowledge;
    private final List<Rule> rules;
    private final LocalDate day;
    private final RulePrint print;
    private final Markdown page = new Markdown();

    RuleBookPage(Bundle bundle, Knowledge knowledge, List<Rule> rules, LocalDate day) {
        this.bundle = bundle;
        this.knowledge = knowledge;
        this.rules = rules;
        this.day = day;
        this.print = new RulePrint(knowledge);
    }

    String of(List<Remark> remarks) {
        opening();
        contents();
        STAGES.forEach(this::stage);
        NumberTables tables = new NumberTables(knowledge, rules);
        tables.limits(page);
        tables.otherNumbers(page);
        unverified();
        overdue();
        remarks(remarks);
        EvidenceTables evidence = new EvidenceTables(knowledge);
        evidence.conflicts(page);
        evidence.ledger(page);
        tables.sources(page);
        tables.changes(page);
        signatures();
        return page.text();
    }

    private void opening() {
        page.heading(1, TITLE);
        page.paragraph(Ink.strong("Decision support for the specialist who closes incompetent leg veins. "
                + "It advises and does not decide: the instructions of the device, the local protocol and the judgement "
                + "of the licensed specialist go first."));
        page.paragraph(
                "Printed from the rules themselves, as the program runs them; nothing in it was written by hand. "
                        + "Reviews are judged as of " + day + ". The digest names this very set of rules and numbers.");
        page.paragraph(Ink.text("Digest "), Ink.code(bundle.digest()));
        page.paragraph(
                "How to read a rule: it speaks when every condition holds. It is in doubt when none fails but one "
                        + "cannot be told, because something was not recorded. Doubt is read against the option: an exclusion "
                        + "in doubt means measure first, a caution in doubt counts, a reason to prefer in doubt does not.");
        page.paragraph(
                "Standing, strongest first: published, guideline, consensus, local (a definition or arithmetic of "
                        + "this project), unverified (from memory or common practice, to be checked before anyone signs).");
        counts();
    }

    private void counts() {
        List<String> head = new ArrayList<>(List.of("rules"));
        Arrays.stream(Standing.values()).map(Standing::word).forEach(head::add);
        head.add("all");
        List<List<Ink>> rows = new ArrayList<>();
        STAGES.forEach((stage, name) ->
                rows.add(counts(name, rule -> rule.conclusion().kind().stage() == stage)));
        rows.add(counts("all", rule -> true));
        page.table(head, rows);
    }

    private List<Ink> counts(String name, Predicate<Rule> counted) {
        List<Rule> some = rules.stream().filter(counted).toList();
        List<Ink> cells = new ArrayList<>(List.of(Ink.text(name)));
        for (Standing standing : Standing.values()) {
            cells.add(Ink.text(String.valueOf(
                    some.stream().filter(rule -> rule.standing() == standing).count())));
        }
        cells.add(Ink.text(String.valueOf(some.size())));
        return cells;
    }

    private void contents() {
        page.heading(2, "Contents");
        List<String> parts = new ArrayList<>(STAGES.values());
        parts.addAll(NumberTables.HEADINGS.subList(0, 2));
        parts.addAll(List.of("What is unverified", "Reviews that are due", "What the checks remark"));
        parts.addAll(EvidenceTables.HEADINGS);
        parts.addAll(NumberTables.HEADINGS.subList(2, 4));
        parts.add("Signatures");
        page.bullets(parts.stream().map(part -> Ink.link(part, part)).toList());
    }

    private void stage(int stage, String name) {
        page.heading(2, name);
        if (stage == 1) {
            findings();
        }
        Map<String, List<Rule>> files = rules.stream()
                .filter(rule -> rule.conclusion().kind().stage() == stage)
                .collect(Collectors.groupingBy(RuleBookPage::file, LinkedHashMap::new, Collectors.toList()));
        files.forEach((file, inFile) -> {
            page.heading(3, question(file));
            inFile.forEach(rule -> print.write(rule, page));
        });
    }

    private void findings() {
        page.paragraph("A finding is a word that later stages ask for. It holds when any of its rules speaks.");
        page.table(
                List.of("finding", "meaning", "found by"),
                knowledge.glossary().findings().entrySet().stream()
                        .map(finding -> List.of(
                                Ink.text(finding.getKey()), Ink.text(finding.getValue()), finders(finding.getKey())))
                        .toList());
    }

    private Ink finders(String finding) {
        return Ink.join(
                ", ",
                rules.stream()
                        .filter(rule -> rule.conclusion().equals(new Conclusion.Find(finding)))
                        .map(RulePrint::link)
                        .toList());
    }

    private static String file(Rule rule) {
        return rule.place().replaceFirst(":\\d+$", "");
    }

    /** The first line of a rule file, which is the question it answers. */
    private String question(String file) {
        return bundle.texts()
                .getOrDefault(file, file)
                .lines()
                .findFirst()
                .orElse(file)
                .replaceFirst("^# *", "");
    }

    private void unverified() {
        page.heading(2, "What is unverified");
        List<Rule> open = rules.stream()
                .filter(rule -> rule.standing() == Standing.UNVERIFIED)
                .toList();
        List<Ink> numbers = knowledge.quantities().values().stream()
                .filter(quantity -> quantity.provenance().standing() == Standing.UNVERIFIED)
                .map(quantity -> Ink.text(quantity.id() + " = " + Figures.with(quantity.value(), quantity.unit())))
                .toList();
        page.paragraph(open.size() + " of " + rules.size() + " rules and " + numbers.size() + " of "
                + knowledge.quantities().size()
                + " numbers rest on memory or common practice. Each must be checked before anyone signs it.");
        page.heading(3, "Unverified rules");
        page.paragraph(Ink.join(", ", open.stream().map(RulePrint::link).toList()));
        page.heading(3, "Unverified numbers");
        page.bullets(numbers);
    }

    private void overdue() {
        page.heading(2, "Reviews that are due");
        List<Rule> overdue = rules.stream()
                .filter(rule -> rule.reviewBy().isBefore(YearMonth.from(day)))
                .toList();
        if (overdue.isEmpty()) {
            page.paragraph("No review is overdue on " + day + ".");
            return;
        }
        page.table(
                List.of("rule", "says", "review by"),
                overdue.stream()
                        .map(rule -> List.of(
                                RulePrint.link(rule),
                                Ink.text(rule.title()),
                                Ink.text(rule.reviewBy().toString())))
                        .toList());
    }

    private void remarks(List<Remark> remarks) {
        page.heading(2, "What the checks remark");
        page.paragraph("Found by reasoning over the rules. Faults bar a release; everything else is for a person to "
                + "judge: that two rules speak at once, or that no rule speaks, may be meant so. Where people let it stand, "
                + "their reason stands beside it; "
                + remarks.stream().filter(Remark::open).count() + " still wait for someone to judge them.");
        if (remarks.isEmpty()) {
            page.paragraph("Nothing.");
            return;
        }
        page.table(
                List.of("kind", "remark", "accepted because"),
                remarks.stream()
                        .map(remark -> List.of(
                                Ink.text((remark.fault() ? "FAULT: " : "")
                                        + remark.kind().words()),
                                Ink.text(remark.sentence()),
                                Ink.text(remark.accepted().orElse(""))))
                        .toList());
    }

    private void signatures() {
        page.heading(2, "Signatures");
        page.paragraph(
                "I have read these rules and numbers and answer for their use here. A signature is valid for the "
                        + "digest on the first page only.");
        page.table(
                List.of("role", "name", "date", "signature"),
                List.of(Markdown.cells("clinical lead", "", "", ""), Markdown.cells("safety officer", "", "", "")));
    }
}
