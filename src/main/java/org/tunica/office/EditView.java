package org.tunica.office;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.UcumWords;
import org.tunica.frame.Frame;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Rule;
import org.tunica.workroom.Draft;
import org.tunica.workroom.NumberEdit;

/** Lays out what is edited in a change. */
record EditView(Desks desks) {
    private static final int LEAST_ROWS = 20;

    Map<String, Rule> rules(Draft draft) {
        Map<String, Rule> rules = new TreeMap<>();
        desks.reviews().of(draft.copy().after()).rules().forEach(rule -> rules.put(rule.id(), rule));
        return rules;
    }

    /** A number as its entry says it now. */
    NumberEdit stands(Draft draft, String id) {
        String entry = NumberEdit.find(draft, id).orElseThrow().entry();
        return new NumberEdit(id, field(entry, "value"), field(entry, "source"), field(entry, "status"), note(entry));
    }

    private static String field(String entry, String name) {
        Matcher found = Pattern.compile("(?m)^  " + name + ": (.*)$").matcher(entry);
        return found.find() ? found.group(1).strip() : "";
    }

    private static String note(String entry) {
        Matcher found = Pattern.compile("(?m)^  note:(.*\\n(?:    .*\\n?)*)").matcher(entry);
        return found.find()
                ? found.group(1).replaceFirst("^\\s*>-?", "").strip().replaceAll("\\s*\\n\\s*", " ")
                : "";
    }

    NumberPage number(
            Frame frame, Draft draft, NumberEdit.Place place, NumberEdit typed, String seen, List<String> faults) {
        Knowledge before = desks.reviews().of(draft.copy().before()).knowledge();
        return new NumberPage(
                frame,
                draft.number(),
                typed.id(),
                field(place.entry(), "says"),
                UcumWords.behind(field(place.entry(), "unit")).strip(),
                seen,
                place.path(),
                typed.value(),
                typed.source(),
                typed.standing(),
                typed.note(),
                RuleFormView.sources(before),
                NumberEdit.standings(),
                feeds(draft, typed.id()),
                faults);
    }

    /** Read from the texts, for the change may not load at the moment. */
    private static List<String> feeds(Draft draft, String id) {
        Pattern opening = Pattern.compile("^rule ([A-Z]{3}-\\d{3})  .*");
        Pattern names = Pattern.compile("\\blimit " + Pattern.quote(id) + "(?![A-Za-z0-9.-]*[A-Za-z0-9])");
        Set<String> feeds = new TreeSet<>();
        draft.copy().after().under("rules/", ".rule").values().forEach(text -> {
            String rule = "";
            for (String line : text.split("\n")) {
                Matcher found = opening.matcher(line);
                if (found.matches()) {
                    rule = found.group(1);
                }
                if (names.matcher(line).find()) {
                    feeds.add(rule);
                }
            }
        });
        return List.copyOf(feeds);
    }

    TextPage text(
            Frame frame, Draft draft, String reader, String path, String text, String seen, List<String> refused) {
        String[] lines = text.split("\\r?\\n", -1);
        List<TextPage.LineFault> here = new ArrayList<>();
        List<ChangePage.FileFault> elsewhere = new ArrayList<>();
        if (refused.isEmpty()) {
            desks.workroom().faults(draft).stream().map(ChangeView::fault).forEach(fault -> {
                if (fault.path().equals(path)) {
                    String quoted = fault.line() <= lines.length ? lines[fault.line() - 1] : "";
                    here.add(new TextPage.LineFault(fault.line(), fault.says(), quoted));
                } else {
                    elsewhere.add(fault);
                }
            });
        }
        return new TextPage(
                frame,
                draft.number(),
                path,
                draft.opening().author().equals(reader),
                seen,
                text,
                gutter(lines.length, here),
                Math.max(LEAST_ROWS, lines.length + 1),
                here,
                elsewhere,
                refused);
    }

    private static String gutter(int count, List<TextPage.LineFault> faults) {
        StringBuilder gutter = new StringBuilder();
        for (int line = 1; line <= count; line++) {
            int here = line;
            boolean faulty = faults.stream().anyMatch(fault -> fault.line() == here);
            gutter.append(String.format(Locale.ROOT, "%s%4d%n", faulty ? "!" : " ", line));
        }
        return gutter.toString();
    }

    /** Ids to choose from; empty while the change does not load. */
    List<String> ids(Draft draft) {
        try {
            return List.copyOf(rules(draft).keySet());
        } catch (FaultyInput e) {
            return List.of();
        }
    }
}
