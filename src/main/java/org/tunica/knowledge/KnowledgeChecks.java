package org.tunica.knowledge;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Nearest;
import org.tunica.casefile.Segment;

/** Checks that go across files: every source, change, field and setting named must exist. */
final class KnowledgeChecks {
    private static final Pattern DOI = Pattern.compile("10\\.\\d{4,9}/\\S+");
    private static final String GLOSSARY = "knowledge/glossary.yaml: ";
    private static final List<String> VEINS =
            Arrays.stream(Segment.Vein.values()).map(Segment.Vein::word).toList();
    private static final int FIRST_YEAR = 1940;
    private static final int LAST_YEAR = 2100;

    private final Knowledge knowledge;
    private final Map<String, String> files;
    private final Faults faults;

    /** Checks what was read; {@code files} tells in which file each id stands. */
    KnowledgeChecks(Knowledge knowledge, Map<String, String> files, Faults faults) {
        this.knowledge = knowledge;
        this.files = files;
        this.faults = faults;
    }

    void check() {
        knowledge.sources().values().forEach(this::source);
        knowledge.quantities().forEach((id, quantity) -> {
            provenance(place(id), quantity.provenance());
            listedByItsChange(id, quantity.provenance().change());
        });
        knowledge.rates().values().forEach(this::rate);
        knowledge.invented().forEach((id, drawn) -> {
            provenance(place(id), drawn.provenance());
            listedByItsChange(id, drawn.provenance().change());
        });
        knowledge.likeness().values().forEach(this::likeness);
        knowledge.measurements().forEach(this::measurement);
        everyNumberHasItsRange();
        knowledge.techniques().values().forEach(this::technique);
        knowledge.principles().values().forEach(this::statement);
        knowledge.afterCare().values().forEach(this::statement);
        provenance("knowledge/vocabulary.yaml: units", knowledge.words().provenance());
        knowledge.changes().values().forEach(this::change);
        knowledge
                .glossary()
                .fields()
                .forEach((id, field) -> field.unit().ifPresent(unit -> unit(GLOSSARY + "fields." + id, id, unit)));
        knowledge.glossary().settings().forEach((id, name) -> unit(GLOSSARY + "settings." + id, id, name.unit()));
        oneMeaningPerSentence();
        oneFieldPerNoun();
    }

    private void unit(String place, String name, String unit) {
        UnitOfName.of(name)
                .filter(promised -> !promised.equals(unit))
                .ifPresent(promised -> faults.add(place + ".unit", "must be " + promised + ", is " + unit));
    }

    private String place(String id) {
        return files.get(id) + ": " + id;
    }

    private void source(Source source) {
        String place = place(source.id());
        source.doi()
                .filter(doi -> !DOI.matcher(doi).matches())
                .ifPresent(doi -> faults.add(place + ".doi", "\"" + doi + "\" has not the shape of a DOI"));
        source.year().ifPresent(year -> {
            if (year < FIRST_YEAR || year > LAST_YEAR) {
                faults.add(place + ".year", year + " is not a year of this literature");
            }
        });
    }

    private void rate(PublishedRate rate) {
        provenance(place(rate.id()), rate.provenance());
        listedByItsChange(rate.id(), rate.provenance().change());
        rate.techniques()
                .forEach(id -> known(
                        place(rate.id()) + ".techniques",
                        id,
                        knowledge.techniques().keySet(),
                        "technique"));
        rate.veins().forEach(vein -> known(place(rate.id()) + ".veins", vein, VEINS, "vein"));
    }

    private void likeness(LikenessRule rule) {
        provenance(place(rule.id()), rule.provenance());
        listedByItsChange(rule.id(), rule.provenance().change());
    }

    private void measurement(String path, Measurement measurement) {
        provenance(place(path), measurement.provenance());
        if (!path.startsWith(Knowledge.DELIVERED) && !path.startsWith(Knowledge.FOLLOW_UP)) {
            known(place(path), path, CaseFile.NUMBERS, "number of a case");
        }
        unit(place(path), path, measurement.range().unit());
    }

    private void everyNumberHasItsRange() {
        CaseFile.NUMBERS.stream()
                .filter(path -> !knowledge.measurements().containsKey(path))
                .forEach(path -> faults.add("knowledge/measurements.yaml: " + path, "must be given"));
    }

    private void provenance(String place, Provenance provenance) {
        known(place + ".source", provenance.source(), knowledge.sources().keySet(), "source");
        known(place + ".change", provenance.change(), knowledge.changes().keySet(), "change record");
    }

    private void statement(Statement statement) {
        String place = place(statement.id());
        known(place + ".source", statement.source(), knowledge.sources().keySet(), "source");
        known(place + ".change", statement.change(), knowledge.changes().keySet(), "change record");
    }

    private void listedByItsChange(String id, String number) {
        ChangeRecord change = knowledge.changes().get(number);
        if (change != null && !change.lists(id)) {
            faults.add(place(id) + ".change", "change " + number + " does not list it under limits");
        }
    }

    private void technique(Technique technique) {
        String file = KnowledgeReader.fileOf(technique) + ": ";
        Map<String, GlossaryField> fields = knowledge.glossary().fields();
        technique.needs().forEach(need -> known(file + "needs", need, fields.keySet(), "field"));
        List<String> drugs = fields.containsKey("room.sclerosantDrugs")
                ? fields.get("room.sclerosantDrugs").values()
                : List.of();
        technique.drugs().forEach(drug -> known(file + "drugs", drug, drugs, "sclerosant"));
        technique.quantities().forEach((key, quantity) -> {
            provenance(file + "quantities." + key, quantity.provenance());
            unit(file + "quantities." + key, key, quantity.unit());
        });
        technique.settings().values().forEach(range -> setting(file + "settings." + range.setting(), range));
        powerWithEnergy(file, technique.settings());
    }

    private void setting(String place, SettingRange range) {
        provenance(place, range.provenance());
        Map<String, Glossary.SettingName> names = knowledge.glossary().settings();
        known(place, range.setting(), names.keySet(), "setting");
        Glossary.SettingName name = names.get(range.setting());
        if (name != null && !name.unit().equals(range.unit())) {
            faults.add(place + ".unit", "must be " + name.unit() + ", is " + range.unit());
        }
    }

    /** A linear energy never stands without a power that gives its pullback. */
    private void powerWithEnergy(String file, Map<String, SettingRange> settings) {
        SettingRange energy = settings.get("leedJPerCm");
        SettingRange power = settings.get("powerW");
        if (energy == null) {
            return;
        }
        if (power == null) {
            faults.add(file + "settings.leedJPerCm", "a linear energy needs its power beside it");
        } else if (!giveAPullback(energy, power) && !settings.containsKey("pullbackSecondsPerCm")) {
            faults.add(
                    file + "settings.leedJPerCm",
                    "no pullback follows: give both it and powerW a typical value, or low and high");
        }
    }

    private static boolean giveAPullback(SettingRange energy, SettingRange power) {
        return givenOr(energy.low(), energy.typical()) && givenOr(power.high(), power.typical())
                || givenOr(energy.high(), energy.typical()) && givenOr(power.low(), power.typical());
    }

    private static boolean givenOr(OptionalDouble end, OptionalDouble typical) {
        return end.isPresent() || typical.isPresent();
    }

    private void change(ChangeRecord change) {
        String file = files.get(change.number()) + ": ";
        change.sources()
                .forEach(source ->
                        known(file + "sources", source, knowledge.sources().keySet(), "source"));
        change.replaces()
                .forEach(number ->
                        known(file + "replaces", number, knowledge.changes().keySet(), "change record"));
        change.limits().forEach(limit -> limit(file + "limits", change, limit));
        change.retires().forEach(id -> retired(file + "retires", change, id));
    }

    private void limit(String place, ChangeRecord change, String limit) {
        if (limit.endsWith(ChangeRecord.GROUP)) {
            String group = limit.substring(0, limit.length() - 1);
            if (listable().noneMatch(id -> id.startsWith(group))) {
                faults.add(place, "there is no quantity of the group " + limit);
            }
            return;
        }
        known(place, limit, listable().toList(), "quantity");
        Quantity quantity = knowledge.quantities().get(limit);
        if (quantity != null && quantity.provenance().change().compareTo(change.number()) < 0) {
            faults.add(place, limit + " names change " + quantity.provenance().change());
        }
    }

    /** A record stays as it was when a later one ends or takes over what it lists. */
    private void retired(String place, ChangeRecord change, String id) {
        boolean brought = knowledge.changes().values().stream()
                .filter(earlier -> earlier.number().compareTo(change.number()) < 0)
                .anyMatch(earlier -> earlier.rules().contains(id) || earlier.lists(id));
        if (!brought) {
            faults.add(place, "no earlier record lists " + id);
        }
        if (present().anyMatch(id::equals)) {
            faults.add(place(id), id + " was retired by change " + change.number() + "; an id is never used again");
        }
    }

    private Stream<String> listable() {
        return Stream.concat(present(), knowledge.retired().keySet().stream());
    }

    private Stream<String> present() {
        return Stream.of(knowledge.quantities(), knowledge.rates(), knowledge.invented(), knowledge.likeness())
                .flatMap(all -> all.keySet().stream());
    }

    /** Two fields with the same sentence would make a rule mean either. */
    private void oneMeaningPerSentence() {
        Set<String> seen = new HashSet<>();
        for (GlossaryField field : knowledge.glossary().fields().values()) {
            List<String> sentences = field.kind() == GlossaryField.Kind.FLAG
                    ? List.of(field.yes(), field.no())
                    : List.of(field.name() + " " + field.verb());
            for (String sentence : sentences) {
                if (!seen.add(sentence)) {
                    faults.add(GLOSSARY + "fields." + field.id(), "\"" + sentence + "\" already means another field");
                }
            }
        }
    }

    /** Two fields of one noun would make "... is not recorded" mean either. */
    private void oneFieldPerNoun() {
        Map<String, String> seen = new HashMap<>();
        for (GlossaryField field : knowledge.glossary().fields().values()) {
            String other = seen.putIfAbsent(field.noun(), field.id());
            if (other != null) {
                faults.add(GLOSSARY + "fields." + field.id() + ".noun", "is the noun of " + other + " too");
            }
        }
    }

    private void known(String place, String id, Collection<String> ids, String what) {
        if (!id.isEmpty() && !ids.contains(id)) {
            faults.add(place, "there is no " + what + " \"" + id + "\"" + Nearest.hint(id, ids));
        }
    }
}
