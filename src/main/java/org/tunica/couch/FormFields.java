package org.tunica.couch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tunica.casefile.Fault;
import org.tunica.couch.FormField.Choice;
import org.tunica.couch.FormField.Shape;

/** Makes the fields of the form; each takes the faults that are about it. */
final class FormFields {
    private static final int FEW_CHOICES = 3;
    private static final int EMPTY_ROWS = 2;

    private final Typed typed;
    /** Faults by place; those that found their field are taken out. */
    private final Map<String, List<String>> open = new LinkedHashMap<>();

    private final List<CaseForm.Mend> mends = new ArrayList<>();

    /** @param faults by names of fields, or by places that are none */
    FormFields(Typed typed, List<Fault> faults) {
        this.typed = typed;
        faults.forEach(fault ->
                open.computeIfAbsent(fault.place(), place -> new ArrayList<>()).add(fault.says()));
    }

    /** What must be mended, first what is about no field; to be asked once every block is made. */
    List<CaseForm.Mend> mends() {
        List<CaseForm.Mend> all = new ArrayList<>();
        open.forEach((place, says) -> says.forEach(one -> all.add(new CaseForm.Mend("", place, one))));
        all.addAll(mends);
        return all;
    }

    FormBlock block(String path, String title, List<Ask> asks) {
        List<FormField> usual = new ArrayList<>();
        List<FormField> rare = new ArrayList<>();
        String prefix = path.isEmpty() ? "" : path + ".";
        asks.forEach(ask -> (ask.rare() ? rare : usual).add(field(ask, prefix + ask.field())));
        boolean rareOpen = rare.stream().anyMatch(FormFields::filled);
        List<String> faults = new ArrayList<>(taken(path, path, title));
        faults.addAll(taken(path + ".segments", path, title));
        return new FormBlock(path, title, usual, rare, rareOpen, faults);
    }

    private static boolean filled(FormField field) {
        return !field.faults().isEmpty()
                || !field.value().isEmpty()
                || field.picked() > 0 && !field.choices().get(0).picked()
                || field.rows().stream().flatMap(List::stream).anyMatch(FormFields::filled);
    }

    private FormField field(Ask ask, String name) {
        return switch (ask.kind()) {
            case TEXT -> line(ask, name, "");
            case NUMBER -> line(ask, name, ask.range() + (ask.required() ? "" : "; empty: not recorded"));
            case WORD, FLAG -> word(ask, name);
            case SET -> set(ask, name);
            case ORDER -> order(ask, name);
            case ROWS -> rows(ask, name);
        };
    }

    private FormField line(Ask ask, String name, String hint) {
        return made(ask, name, Shape.LINE, hint, typed.text(name), List.of(), List.of());
    }

    private FormField word(Ask ask, String name) {
        boolean few = ask.choices().size() <= FEW_CHOICES;
        String value = typed.text(name);
        List<Choice> choices = new ArrayList<>();
        if (!ask.required()) {
            choices.add(new Choice("", "not recorded", value.isEmpty()));
        } else if (!few) {
            choices.add(new Choice("", "choose", value.isEmpty()));
        }
        ask.choices()
                .forEach(one -> choices.add(
                        new Choice(one.word(), one.says(), one.word().equals(value))));
        if (!value.isEmpty()
                && choices.stream()
                        .noneMatch(one -> one.picked() && !one.value().isEmpty())) {
            choices.add(new Choice(value, "\"" + value + "\", not known here", true));
        }
        return made(ask, name, few ? Shape.RADIOS : Shape.SELECT, "", "", choices, List.of());
    }

    private FormField set(Ask ask, String name) {
        List<String> ticked = typed.all(name + "[]");
        List<Choice> choices = new ArrayList<>();
        ask.choices().forEach(one -> choices.add(new Choice(one.word(), one.says(), ticked.contains(one.word()))));
        ticked.stream()
                .filter(word -> choices.stream().noneMatch(one -> one.value().equals(word)))
                .forEach(word -> choices.add(new Choice(word, "\"" + word + "\", not known here", true)));
        return made(ask, name, Shape.TICKS, "", typed.text(name), choices, List.of());
    }

    private FormField order(Ask ask, String name) {
        List<List<FormField>> rows = new ArrayList<>();
        for (int i = 0; i < ask.choices().size(); i++) {
            Ask place = new Ask(
                    "", ask.path(), Ask.Kind.WORD, "Place " + (i + 1), "", "", ask.choices(), false, false, List.of());
            rows.add(List.of(word(place, name + "[" + i + "]")));
        }
        return made(ask, name, Shape.ROWS, "", "", List.of(), rows);
    }

    private FormField rows(Ask ask, String name) {
        List<List<FormField>> rows = new ArrayList<>();
        for (int i = 0; i < typed.rows(name) + EMPTY_ROWS; i++) {
            String prefix = name + "[" + i + "].";
            rows.add(ask.row().stream()
                    .map(one -> field(one, prefix + one.field()))
                    .toList());
        }
        List<Choice> choices = List.of(
                new Choice("", "not recorded", !typed.text(name).equals(Typed.RECORDED)),
                new Choice(
                        Typed.RECORDED,
                        "recorded: those below and no other",
                        typed.text(name).equals(Typed.RECORDED)));
        return made(ask, name, Shape.ROWS, "", typed.text(name), choices, rows);
    }

    private FormField made(
            Ask ask,
            String name,
            Shape shape,
            String hint,
            String value,
            List<Choice> choices,
            List<List<FormField>> rows) {
        List<String> faults = taken(name, name, ask.says());
        return new FormField(
                name,
                FormField.id(name),
                shape,
                ask.says(),
                hint,
                ask.unit(),
                ask.required(),
                value,
                choices,
                faults,
                rows);
    }

    /** The faults of a place, or of anything in a list that stands there. */
    private List<String> taken(String place, String name, String says) {
        List<String> faults = new ArrayList<>();
        open.entrySet().removeIf(fault -> {
            boolean here = fault.getKey().replaceFirst("\\[\\d+]$", "").equals(place)
                    || fault.getKey().equals(place);
            if (here) {
                faults.addAll(fault.getValue());
            }
            return here;
        });
        faults.forEach(fault -> mends.add(new CaseForm.Mend(FormField.id(name), says, fault)));
        return faults;
    }
}
