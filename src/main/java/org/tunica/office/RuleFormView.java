package org.tunica.office;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tunica.frame.Frame;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;
import org.tunica.workroom.NumberEdit;
import org.tunica.workroom.RuleEdit;

/** Lays a rule out as a form: what it says, or what was typed and not taken. */
final class RuleFormView {
    private RuleFormView() {}

    static RuleFormPage of(
            Frame frame, String number, RuleEdit edit, RuleEdit.Typed typed, String seen, List<String> faults) {
        Rule rule = edit.rule();
        List<RuleFormPage.Part> parts = new ArrayList<>();
        for (int i = 0; i < rule.conditions().size(); i++) {
            parts.add(part(rule.conditions().get(i), i, edit, typed));
        }
        return new RuleFormPage(
                frame,
                number,
                rule.id(),
                rule.title(),
                seen,
                edit.path(),
                parts,
                rule.conclusion().sentence(),
                typed.one("sources"),
                typed.one("standing"),
                typed.one("reviewBy"),
                typed.one("because"),
                sources(edit.knowledge()),
                NumberEdit.standings(),
                faults);
    }

    static List<RulePage.SourceLine> sources(Knowledge knowledge) {
        return knowledge.sources().values().stream()
                .map(source -> new RulePage.SourceLine(
                        source.id(), source.cites(), source.read().word()))
                .toList();
    }

    /** What a form holds of a rule nobody has typed into yet. */
    static RuleEdit.Typed standing(RuleEdit edit) {
        Rule rule = edit.rule();
        Map<String, List<String>> fields = new TreeMap<>();
        fields.put("sources", List.of(String.join(", ", rule.sources())));
        fields.put("standing", List.of(rule.standing().word()));
        fields.put("reviewBy", List.of(rule.reviewBy().toString()));
        fields.put("because", List.of(rule.because()));
        for (int i = 0; i < rule.conditions().size(); i++) {
            Condition condition = rule.conditions().get(i);
            if (condition instanceof Condition.Compared compared) {
                fields.put(i + ".comparison", List.of(compared.comparison().words()));
                fields.put(i + ".limit", List.of(compared.limit().id()));
            } else if (condition instanceof Condition.Between between) {
                fields.put(i + ".low", List.of(between.low().id()));
                fields.put(i + ".high", List.of(between.high().id()));
            } else if (condition instanceof Condition.AmongWords among) {
                fields.put(i + ".words", among.words());
            } else if (condition instanceof Condition.AnyOf any) {
                fields.put(i + ".words", any.words());
            }
        }
        return field -> fields.getOrDefault(field, List.of());
    }

    private static RuleFormPage.Part part(Condition condition, int place, RuleEdit edit, RuleEdit.Typed typed) {
        List<RuleFormPage.Choice> choices = new ArrayList<>();
        List<String> words = List.of();
        if (condition instanceof Condition.Compared compared) {
            choices.add(new RuleFormPage.Choice(
                    place + ".comparison",
                    compared.field().name(),
                    typed.one(place + ".comparison"),
                    Arrays.stream(Condition.Comparison.values())
                            .map(one -> new RuleFormPage.Option(one.words(), one.words()))
                            .toList()));
            choices.add(limit(place + ".limit", "limit", compared.limit(), edit, typed));
        } else if (condition instanceof Condition.Between between) {
            choices.add(limit(place + ".low", "from limit", between.low(), edit, typed));
            choices.add(limit(place + ".high", "to limit", between.high(), edit, typed));
        } else if (condition instanceof Condition.AmongWords among) {
            words = among.field().values();
        } else if (condition instanceof Condition.AnyOf any) {
            words = any.field().values();
        }
        List<String> chosen = typed.all(place + ".words");
        return new RuleFormPage.Part(
                place,
                condition.sentence(),
                choices,
                words.stream()
                        .map(word -> new RuleFormPage.Word(word, chosen.contains(word)))
                        .toList());
    }

    private static RuleFormPage.Choice limit(
            String field, String label, Quantity limit, RuleEdit edit, RuleEdit.Typed typed) {
        return new RuleFormPage.Choice(
                field,
                label,
                typed.one(field),
                edit.limitsLike(limit).stream()
                        .map(one -> new RuleFormPage.Option(
                                one.id(),
                                one.id() + ", " + RuleView.amount(one) + ", "
                                        + one.provenance().standing().word()))
                        .toList());
    }
}
