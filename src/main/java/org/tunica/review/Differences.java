package org.tunica.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.Conflict;
import org.tunica.knowledge.Evidence;
import org.tunica.knowledge.Glossary;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Hazard;
import org.tunica.knowledge.IntendedUse;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Measurement;
import org.tunica.knowledge.PlainFigure;
import org.tunica.knowledge.PlainWay;
import org.tunica.knowledge.PlainWords;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Source;
import org.tunica.knowledge.Statement;
import org.tunica.knowledge.Technique;
import org.tunica.rules.Rule;

/** Compares what two releases say, entry by entry; in which file or order it stands does not count. */
final class Differences {
    private final List<Difference> all = new ArrayList<>();

    private Differences() {}

    static List<Difference> between(Knowledge before, List<Rule> rulesBefore, Knowledge after, List<Rule> rulesAfter) {
        Differences found = new Differences();
        found.compare(Difference.Part.RULE, byId(rulesBefore), byId(rulesAfter), Aspects::of, Rule::title);
        found.compare(
                Difference.Part.NUMBER,
                before.quantities(),
                after.quantities(),
                Aspects::of,
                number -> title(number, rulesAfter));
        found.compare(Difference.Part.TECHNIQUE, before.techniques(), after.techniques(), Aspects::of, Technique::says);
        found.compare(
                Difference.Part.MEASUREMENT,
                before.measurements(),
                after.measurements(),
                Aspects::of,
                Measurement::says);
        found.words(before, after);
        found.safety(before, after);
        found.people(before, after);
        found.compare(Difference.Part.SOURCE, before.sources(), after.sources(), Aspects::of, Source::about);
        found.compare(
                Difference.Part.CHANGE_RECORD, before.changes(), after.changes(), Aspects::of, ChangeRecord::title);
        return List.copyOf(found.all);
    }

    private void words(Knowledge before, Knowledge after) {
        Glossary was = before.glossary();
        Glossary is = after.glossary();
        compare(Difference.Part.FIELD, was.fields(), is.fields(), Aspects::of, GlossaryField::noun);
        compare(Difference.Part.FINDING, was.findings(), is.findings(), Aspects::of, words -> words);
        compare(Difference.Part.SETTING, was.settings(), is.settings(), Aspects::of, Glossary.SettingName::name);
        compare(Difference.Part.CONDITION, before.conditions(), after.conditions(), Aspects::of, words -> words);
        compare(Difference.Part.ALLERGY, before.allergies(), after.allergies(), Aspects::of, words -> words);
    }

    /** What is said to patients and about the time afterwards. */
    private void people(Knowledge before, Knowledge after) {
        compare(Difference.Part.AFTER_CARE, before.afterCare(), after.afterCare(), Aspects::of, Statement::says);
        PlainWords was = before.plain();
        PlainWords is = after.plain();
        compare(Difference.Part.PATIENT_WAY, was.ways(), is.ways(), Aspects::of, PlainWay::name);
        compare(Difference.Part.PATIENT_FIGURE, was.figures(), is.figures(), Aspects::of, PlainFigure::says);
        compare(Difference.Part.PATIENT_SENTENCE, was.sentences(), is.sentences(), Aspects::of, Statement::says);
    }

    private void safety(Knowledge before, Knowledge after) {
        compare(Difference.Part.HAZARD, before.hazards(), after.hazards(), Aspects::of, Hazard::hazard);
        compare(
                Difference.Part.INTENDED_USE,
                Map.of("purpose", before.intendedUse()),
                Map.of("purpose", after.intendedUse()),
                Aspects::of,
                IntendedUse::says);
        compare(Difference.Part.CONFLICT, before.conflicts(), after.conflicts(), Aspects::of, Conflict::question);
        compare(Difference.Part.EVIDENCE, before.evidence(), after.evidence(), Aspects::of, Evidence::says);
        compare(
                Difference.Part.ACCEPTED_REMARK,
                before.accepted(),
                after.accepted(),
                Aspects::of,
                accepted -> String.join(" and ", accepted.rules()));
        compare(Difference.Part.WORK_PRINCIPLE, before.principles(), after.principles(), Aspects::of, Statement::says);
    }

    private <T> void compare(
            Difference.Part part,
            Map<String, T> before,
            Map<String, T> after,
            Function<T, Aspects> aspects,
            Function<T, String> title) {
        TreeSet<String> ids = new TreeSet<>(before.keySet());
        ids.addAll(after.keySet());
        for (String id : ids) {
            T was = before.get(id);
            T is = after.get(id);
            if (was == null) {
                all.add(new Difference(part, Difference.Act.ADDED, id, title.apply(is), List.of()));
            } else if (is == null) {
                all.add(new Difference(part, Difference.Act.REMOVED, id, title.apply(was), List.of()));
            } else {
                List<Difference.Detail> details = aspects.apply(was).changedTo(aspects.apply(is));
                if (!details.isEmpty()) {
                    all.add(new Difference(part, Difference.Act.CHANGED, id, title.apply(is), details));
                }
            }
        }
    }

    /** What a number is, on what it rests and which rules it moves. */
    private static String title(Quantity number, List<Rule> rules) {
        List<String> naming = rules.stream()
                .filter(rule -> rule.limitIds().contains(number.id()))
                .map(Rule::id)
                .toList();
        return number.says() + " (" + number.provenance().source() + ", "
                + number.provenance().standing().word()
                + (naming.isEmpty() ? "" : "; named by " + String.join(", ", naming)) + ")";
    }

    private static Map<String, Rule> byId(List<Rule> rules) {
        Map<String, Rule> byId = new LinkedHashMap<>();
        rules.forEach(rule -> byId.put(rule.id(), rule));
        return byId;
    }
}
