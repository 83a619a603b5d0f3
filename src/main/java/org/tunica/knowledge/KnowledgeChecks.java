package org.tunica.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Nearest;

/** Checks that go across files: every source, change, field and setting named must exist. */
final class KnowledgeChecks {
    private static final Pattern DOI = Pattern.compile("10\\.\\d{4,9}/\\S+");
    private static final int FIRST_YEAR = 1940;
    private static final int LAST_YEAR = 2100;

    private final Knowledge knowledge;
    private final Faults faults;

    KnowledgeChecks(Knowledge knowledge, Faults faults) {
        this.knowledge = knowledge;
        this.faults = faults;
    }

    void check() {
        knowledge.sources().values().forEach(this::source);
        knowledge.quantities().forEach((id, quantity) -> {
            provenance(id, quantity.provenance());
            listedByItsChange(id, quantity.provenance().change());
        });
        knowledge.measurements().forEach((path, measurement) -> provenance(path, measurement.provenance()));
        knowledge.techniques().values().forEach(this::technique);
        knowledge.changes().values().forEach(this::change);
        oneMeaningPerSentence();
    }

    private void source(Source source) {
        source.doi()
                .filter(doi -> !DOI.matcher(doi).matches())
                .ifPresent(doi -> faults.add(source.id() + ".doi", "\"" + doi + "\" has not the shape of a DOI"));
        source.year().ifPresent(year -> {
            if (year < FIRST_YEAR || year > LAST_YEAR) {
                faults.add(source.id() + ".year", year + " is not a year of this literature");
            }
        });
    }

    private void provenance(String place, Provenance provenance) {
        known(place + ".source", provenance.source(), knowledge.sources().keySet(), "source");
        known(place + ".change", provenance.change(), knowledge.changes().keySet(), "change record");
    }

    private void listedByItsChange(String id, String number) {
        ChangeRecord change = knowledge.changes().get(number);
        if (change != null && !change.lists(id)) {
            faults.add(id + ".change", "change " + number + " does not list it under limits");
        }
    }

    private void technique(Technique technique) {
        Map<String, GlossaryField> fields = knowledge.glossary().fields();
        technique.needs().forEach(need -> known(technique.id() + ".needs", need, fields.keySet(), "field"));
        List<String> drugs = fields.containsKey("room.sclerosantDrugs")
                ? fields.get("room.sclerosantDrugs").values()
                : List.of();
        technique.drugs().forEach(drug -> known(technique.id() + ".drugs", drug, drugs, "sclerosant"));
        technique.quantities().values().forEach(quantity -> provenance(quantity.id(), quantity.provenance()));
        technique.settings().values().forEach(range -> setting(technique, range));
        powerWithEnergy(technique);
    }

    private void setting(Technique technique, SettingRange range) {
        String place = technique.id() + ".settings." + range.setting();
        provenance(place, range.provenance());
        Map<String, Glossary.SettingName> names = knowledge.glossary().settings();
        known(place, range.setting(), names.keySet(), "setting");
        Glossary.SettingName name = names.get(range.setting());
        if (name != null && !name.unit().equals(range.unit())) {
            faults.add(place + ".unit", "must be " + name.unit() + ", is " + range.unit());
        }
    }

    /** A linear energy never stands without its power: the pullback would be unknown. */
    private void powerWithEnergy(Technique technique) {
        if (technique.settings().containsKey("leedJPerCm")
                && !technique.settings().containsKey("powerW")) {
            faults.add(technique.id() + ".settings.leedJPerCm", "a linear energy needs its power beside it");
        }
    }

    private void change(ChangeRecord change) {
        String place = "change " + change.number();
        change.sources()
                .forEach(source ->
                        known(place + ".sources", source, knowledge.sources().keySet(), "source"));
        change.replaces()
                .forEach(number ->
                        known(place + ".replaces", number, knowledge.changes().keySet(), "change record"));
        change.limits().forEach(limit -> limit(change, limit));
    }

    private void limit(ChangeRecord change, String limit) {
        String place = "change " + change.number() + ".limits";
        if (limit.endsWith(ChangeRecord.GROUP)) {
            String group = limit.substring(0, limit.length() - 1);
            if (knowledge.quantities().keySet().stream().noneMatch(id -> id.startsWith(group))) {
                faults.add(place, "there is no quantity of the group " + limit);
            }
            return;
        }
        known(place, limit, knowledge.quantities().keySet(), "quantity");
        Quantity quantity = knowledge.quantities().get(limit);
        if (quantity != null && !quantity.provenance().change().equals(change.number())) {
            faults.add(place, limit + " names change " + quantity.provenance().change());
        }
    }

    /** Two fields with the same sentence would make a rule mean either. */
    private void oneMeaningPerSentence() {
        List<String> seen = new ArrayList<>();
        for (GlossaryField field : knowledge.glossary().fields().values()) {
            List<String> sentences = field.kind() == GlossaryField.Kind.FLAG
                    ? List.of(field.yes(), field.no())
                    : List.of(field.name() + " " + field.verb());
            for (String sentence : sentences) {
                if (seen.contains(sentence)) {
                    faults.add("glossary.fields." + field.id(), "\"" + sentence + "\" already means another field");
                }
                seen.add(sentence);
            }
        }
    }

    private void known(String place, String id, Collection<String> ids, String what) {
        if (!id.isEmpty() && !Set.copyOf(ids).contains(id)) {
            faults.add(place, "there is no " + what + " \"" + id + "\"" + Nearest.hint(id, ids));
        }
    }
}
