package org.tunica.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;
import org.tunica.rules.RuleBook;

/**
 * Common mistakes of authors, really made in a copy of a rule in force and really read, so that the messages shown are
 * those an author will see.
 */
final class Mistakes {
    private static final String FILE = "rules/2-exclusions/your-question.rule";
    private static final String ID = "EXC-999";

    private final Bundle bundle;
    private final Knowledge knowledge;
    private final Rule model;
    private final Condition.Compared compared;

    private Mistakes(Bundle bundle, Knowledge knowledge, Rule model) {
        this.bundle = bundle;
        this.knowledge = knowledge;
        this.model = model;
        this.compared = (Condition.Compared) model.conditions().get(1);
    }

    /** Mistakes made in the first rule that excludes by a number in its second and last condition, if there is one. */
    static Optional<Mistakes> in(Bundle bundle, Knowledge knowledge, List<Rule> rules) {
        return rules.stream()
                .filter(rule -> rule.conclusion().kind() == Conclusion.Kind.EXCLUDE)
                .filter(rule -> rule.conditions().size() == 2)
                .filter(rule -> rule.conditions().get(1) instanceof Condition.Compared)
                .findFirst()
                .map(rule -> new Mistakes(bundle, knowledge, rule));
    }

    /** A rule file with one rule in it. */
    String example() {
        return """
                # What does this file answer?
                rule %s  %s
                  source %s, %s   change %s   review by %s   class contraindication
                  when %s
                  and  %s
                  then exclude
                  because %s
                """.formatted(
                        model.id(),
                        model.title(),
                        String.join(" ", model.sources()),
                        model.standing().word(),
                        model.change(),
                        model.reviewBy(),
                        model.conditions().get(0).sentence(),
                        compared.sentence(),
                        model.because());
    }

    void write(Markdown page) {
        page.heading(2, "Common mistakes and what the program says");
        List<List<Ink>> rows = new ArrayList<>();
        made().forEach((mistake, text) ->
                rows.add(List.of(Ink.text(mistake), changedLine(text), Ink.join(" / ", messages(text)))));
        page.table(List.of("mistake", "written", "message"), rows);
    }

    /** The example with one mistake each, by what is wrong. */
    Map<String, String> made() {
        String right = right();
        String limit = "limit " + compared.limit().id();
        Map<String, String> made = new LinkedHashMap<>();
        made.put(
                "a number in the rule",
                right.replace(
                        limit,
                        Figures.with(compared.limit().value(), compared.limit().unit())));
        made.put("a limit that is not there", right.replace(limit, limit + "x"));
        made.put(
                "a comparison that is no form",
                right.replace(compared.comparison().words(), "is under"));
        made.put(
                "a mistyped field",
                right.replace(compared.field().name(), mistyped(compared.field().name())));
        made.put("two conditions in one line", right.replace("\n  and  ", " and "));
        made.put("an \"or\" between conditions", right.replace("\n  and  ", "\n  or   "));
        made.put("the same condition twice", right.replace("\n  then", "\n  and  " + compared.sentence() + "\n  then"));
        made.put("a conclusion that is no form", right.replace("then exclude", "then forbid"));
        made.put("a conclusion of another stage", right.replace("then exclude", "then caution slightly"));
        made.put("one blank in the header", right.replace("   change", " change"));
        made.put(
                "a standing that is none", right.replace(", " + model.standing().word(), ", proven"));
        made.put("no reason", right.replaceFirst("\n  because [^\n]*", ""));
        made.put("a digit in the reason", right.replace("because " + model.because(), "because of the rule of 5"));
        made.put(
                "asking what is not settled yet",
                right.replace("and  " + compared.sentence(), "and  there is a caution"));
        made.put(
                "what is not recorded, but not measured first",
                right.replace(compared.sentence(), compared.field().noun() + " is not recorded"));
        made.put("a line that is not indented", right.replace("  then exclude", "then exclude"));
        made.put("a file without its question", right.replaceFirst("# [^\n]*\n", ""));
        return made;
    }

    private static String mistyped(String name) {
        return name.substring(0, name.length() - 2) + name.substring(name.length() - 1);
    }

    /** The line that is new, or the one that went. */
    private Ink changedLine(String text) {
        List<String> right = right().lines().toList();
        List<String> written = text.lines().toList();
        List<String> added = new ArrayList<>(written);
        right.forEach(added::remove);
        List<String> gone = new ArrayList<>(right);
        written.forEach(gone::remove);
        return added.isEmpty()
                ? Ink.of(Ink.text("without: "), Ink.code(gone.get(0).strip()))
                : Ink.code(added.get(0));
    }

    private String right() {
        return example().replace(model.id(), ID);
    }

    private List<Ink> messages(String text) {
        return faults(text).stream()
                .map(fault -> Ink.text("line " + fault.place().replaceFirst(".*:", "") + ": " + fault.says()))
                .toList();
    }

    /** What is wrong with a text apart from what is wrong with any rule no change record lists. */
    List<Fault> faults(String text) {
        List<String> always = read(right()).stream().map(Fault::says).toList();
        return read(text).stream()
                .filter(fault -> fault.place().startsWith(FILE))
                .filter(fault -> !always.contains(fault.says()))
                .toList();
    }

    private List<Fault> read(String text) {
        Map<String, String> texts = new TreeMap<>(bundle.texts());
        texts.put(FILE, text);
        try {
            RuleBook.of(Bundle.of(texts), knowledge);
            return List.of();
        } catch (FaultyInput e) {
            return e.faults();
        }
    }
}
