package org.tunica.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;
import org.tunica.rules.RuleBook;

/** The page for people who write rules: every form of a sentence, with an example from the rules in force. */
final class GrammarPage {
    static final String TITLE = "How rules are written";
    private static final String NO_EXAMPLE = "no rule says this yet";

    private final Knowledge knowledge;
    private final List<Rule> rules;
    private final Markdown page = new Markdown();

    GrammarPage(Knowledge knowledge, List<Rule> rules) {
        this.knowledge = knowledge;
        this.rules = rules;
    }

    String of(Optional<Mistakes> mistakes) {
        page.heading(1, TITLE);
        page.paragraph(
                "A rule is a handful of whole sentences from a closed list. A line that fits no form is refused, "
                        + "with its file, its line and the closest form. Nothing else is read, so nothing else can be meant.");
        whole(mistakes);
        header();
        conditionForms();
        conclusions();
        fields();
        words("Findings", knowledge.glossary().findings());
        settings();
        mistakes.ifPresent(shown -> shown.write(page));
        return page.text();
    }

    private void whole(Optional<Mistakes> mistakes) {
        page.heading(2, "A rule file");
        mistakes.ifPresent(shown -> page.lines(shown.example()));
        page.bullets(List.of(
                Ink.text("The first line of a file is a # and the question the file answers; one question to a file."),
                Ink.text(
                        "Rules are parted by an empty line. Every line of a rule is indented by two blanks; a reason may go "
                                + "on in further lines indented by four."),
                Ink.text("Only printable ASCII characters, and no line longer than 300."),
                Ink.text("An id is three letters and three digits. It is never changed and never used again."),
                Ink.text(
                        "The sentence after the id is true when the rule speaks. The reason is one sentence for the clinician."),
                Ink.text(
                        "No number stands in a rule, neither in digits nor in words: numbers have a unit, a source and a "
                                + "standing, and stand in knowledge/limits."),
                Ink.text(
                        "At most five conditions, all of which must hold. There is no \"or\" between conditions: write two "
                                + "rules. One conclusion to a rule."),
                Ink.text("A rule may ask only what earlier stages have settled. A finding never rests on a finding."),
                Ink.text(
                        "A rule that ends in \"then bring to the meeting\" is asked once the ranking stands and of the segment, "
                                + "not of one option: it may ask about patient, leg, segment and ranking, and no other rule may ask "
                                + "about the ranking. What it says changes no ranking.")));
    }

    private void header() {
        page.heading(2, "The line that says who stands behind it");
        page.paragraph(
                Ink.code("source <S-0001 ...>, <standing>   change <0001>   review by <2027-11>   class <class>   "
                        + "hazard <HZ-01 ...>"));
        page.bullets(List.of(
                Ink.text(
                        "Two blanks or more between the parts. The hazard may be left out where the rule controls none."),
                Ink.text("Standing is that of the weakest part: published, guideline, consensus, local or unverified."),
                Ink.text("The change record lists the rule, and the rule names the change record.")));
        page.heading(3, "Ids, folders and classes");
        page.table(
                List.of("conclusion", "folder", "id starts with", "class"),
                Arrays.stream(Conclusion.Kind.values())
                        .map(kind -> Markdown.cells(
                                kind.sentence(), "rules/" + kind.folder(), kind.prefix(), kind.ruleClass()))
                        .toList());
    }

    private void conditionForms() {
        page.heading(2, "Forms of a condition");
        Map<String, Predicate<Condition>> forms = new LinkedHashMap<>();
        for (Condition.Comparison comparison : Condition.Comparison.values()) {
            forms.put(
                    "<number> " + comparison.words() + " limit <limit>",
                    condition ->
                            condition instanceof Condition.Compared compared && compared.comparison() == comparison);
        }
        forms.put("<number> is between limit <limit> and limit <limit>", condition -> between(condition, true));
        forms.put("<number> is not between limit <limit> and limit <limit>", condition -> between(condition, false));
        forms.put("<word> is <one> or <other>", condition -> among(condition, true));
        forms.put("<word> is not <one> or <other>", condition -> among(condition, false));
        forms.put("<set> has <one> or <other>", condition -> anyOf(condition, true));
        forms.put("<set> does not have <one> or <other>", condition -> anyOf(condition, false));
        forms.put("<sentence for yes>", condition -> flag(condition, true));
        forms.put("<sentence for no>", condition -> flag(condition, false));
        forms.put("<noun> is not recorded", Condition.Unrecorded.class::isInstance);
        forms.put("the finding <finding> holds", condition -> found(condition, true));
        forms.put("the finding <finding> does not hold", condition -> found(condition, false));
        for (Conclusion.Kind kind : Conclusion.Kind.ASKED_LATER) {
            for (boolean wanted : List.of(true, false)) {
                Condition form = new Condition.Earlier(kind, wanted);
                forms.put(form.sentence(), form::equals);
            }
        }
        forms.put("in another segment of this leg <condition on the segment>", condition -> elsewhere(condition, true));
        forms.put(
                "in no other segment of this leg <condition on the segment>", condition -> elsewhere(condition, false));
        List<List<Ink>> rows = new ArrayList<>();
        forms.forEach((form, fits) -> rows.add(List.of(Ink.code(form), conditionExample(fits))));
        page.table(List.of("form", "example"), rows);
        page.paragraph(
                "\"Between\" includes both limits. A set \"has\" when any of the words is in it, and \"does not have\" "
                        + "when none is. What there \"is\" of verdicts is what earlier stages said of the same option. \"Is not recorded\" and \"then measure first\" go together: what is "
                        + "unknown must never count in favour.");
    }

    private Ink conditionExample(Predicate<Condition> fits) {
        for (Rule rule : rules) {
            Optional<Condition> example =
                    rule.conditions().stream().filter(fits).findFirst();
            if (example.isPresent()) {
                return Ink.of(Ink.code(example.get().sentence()), new Ink(" ", " "), Ink.text("(" + rule.id() + ")"));
            }
        }
        return Ink.text(NO_EXAMPLE);
    }

    private void conclusions() {
        page.heading(2, "Conclusions");
        page.table(
                List.of("form, after \"then\"", "example"),
                RuleBook.conclusionForms(knowledge).stream()
                        .map(form -> List.of(Ink.code(form), conclusionExample(form)))
                        .toList());
    }

    private Ink conclusionExample(String form) {
        String start = form.replaceFirst("<.*", "");
        return rules.stream()
                .filter(rule -> form.contains("<")
                        ? rule.conclusion().sentence().startsWith(start)
                        : rule.conclusion().sentence().equals(form))
                .findFirst()
                .map(rule -> Ink.of(Ink.code("then " + rule.conclusion().sentence()), Ink.text(" (" + rule.id() + ")")))
                .orElse(Ink.text(NO_EXAMPLE));
    }

    private void fields() {
        page.heading(2, "What a rule may ask");
        for (GlossaryField.Kind kind : GlossaryField.Kind.values()) {
            page.heading(3, heading(kind));
            page.table(
                    List.of(
                            "sentence",
                            "noun",
                            kind == GlossaryField.Kind.NUMBER ? "unit" : "words allowed",
                            "used in rules"),
                    knowledge.glossary().fields().values().stream()
                            .filter(field -> field.kind() == kind)
                            .map(this::row)
                            .toList());
        }
    }

    private static String heading(GlossaryField.Kind kind) {
        return switch (kind) {
            case NUMBER -> "Numbers, compared with a limit";
            case WORD -> "Words, one at a time";
            case FLAG -> "Sentences that are true or not";
            case SET -> "Sets, of which any or none may be asked";
        };
    }

    private List<Ink> row(GlossaryField field) {
        return List.of(
                Ink.text(sentence(field)),
                Ink.text(field.noun()),
                Ink.text(
                        field.kind() == GlossaryField.Kind.NUMBER
                                ? Figures.unit(field.unit().orElse("1"))
                                : words(field)),
                Ink.text(String.valueOf(rules.stream()
                        .filter(rule -> rule.onOption().stream()
                                .anyMatch(condition -> condition.field().equals(field)))
                        .count())));
    }

    private String words(GlossaryField field) {
        List<String> nouns = knowledge.glossary().fields().values().stream()
                .map(GlossaryField::noun)
                .toList();
        return field.values().equals(nouns) ? "any noun of these tables" : String.join(", ", field.values());
    }

    private static String sentence(GlossaryField field) {
        return switch (field.kind()) {
            case NUMBER -> field.name() + " ...";
            case WORD, SET -> field.name() + " " + field.verb() + " / " + field.verbNot() + " ...";
            case FLAG -> field.yes() + " / " + field.no();
        };
    }

    private void words(String heading, Map<String, String> words) {
        page.heading(2, heading);
        page.table(
                List.of("word", "meaning"),
                words.entrySet().stream()
                        .map(word -> Markdown.cells(word.getKey(), word.getValue()))
                        .toList());
    }

    private void settings() {
        page.heading(2, "Settings");
        page.table(
                List.of("setting", "unit"),
                knowledge.glossary().settings().values().stream()
                        .map(setting -> Markdown.cells(setting.name(), Figures.unit(setting.unit())))
                        .toList());
    }

    private static boolean between(Condition condition, boolean within) {
        return condition instanceof Condition.Between between && between.within() == within;
    }

    private static boolean among(Condition condition, boolean among) {
        return condition instanceof Condition.AmongWords words && words.among() == among;
    }

    private static boolean anyOf(Condition condition, boolean any) {
        return condition instanceof Condition.AnyOf set && set.any() == any;
    }

    private static boolean flag(Condition condition, boolean wanted) {
        return condition instanceof Condition.Holds flag && flag.wanted() == wanted;
    }

    private static boolean found(Condition condition, boolean wanted) {
        return condition instanceof Condition.Found found && found.wanted() == wanted;
    }

    private static boolean elsewhere(Condition condition, boolean wanted) {
        return condition instanceof Condition.Elsewhere elsewhere && elsewhere.wanted() == wanted;
    }
}
