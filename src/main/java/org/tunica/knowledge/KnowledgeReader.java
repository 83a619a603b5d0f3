package org.tunica.knowledge;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.PlausibleRange;

/** Reads every file under knowledge/ and the change records, then checks them against each other. */
final class KnowledgeReader {
    private static final String TECHNIQUES = KnowledgeFiles.TECHNIQUES;
    private static final String CHANGES = "rules/changes/";

    private final Bundle bundle;
    private final Faults faults = new Faults();

    /** Where each entry stands, by id; an id has one meaning in all of knowledge/. */
    private final Map<String, String> places = new HashMap<>();

    private boolean readable = true;

    KnowledgeReader(Bundle bundle) {
        this.bundle = bundle;
    }

    Knowledge read() {
        SortedMap<String, Technique> techniques = techniques();
        Map<String, String> conditions = wordsOf("knowledge/conditions.yaml");
        Map<String, String> allergies = wordsOf("knowledge/allergies.yaml");
        Glossary glossary = glossary(techniques.keySet(), conditions.keySet(), allergies.keySet());
        Knowledge knowledge = new Knowledge(
                entries("knowledge/sources", this::source),
                quantities(),
                Collections.unmodifiableSortedMap(techniques),
                conditions,
                allergies,
                entries("knowledge/measurements", this::measurement),
                changes(),
                entries("knowledge/evidence/", LedgerReader::evidence),
                entries("knowledge/conflicts", LedgerReader::conflict),
                entries("knowledge/accepted", LedgerReader::accepted),
                entries("knowledge/hazards", SafetyReader::hazard),
                SafetyReader.intendedUse(file("knowledge/intended-use.yaml")),
                entries("knowledge/work-order", KnowledgeReader::statement),
                entries("knowledge/after-care", KnowledgeReader::statement),
                new PlainWords(
                        entries("knowledge/plain/ways", PlainReader::way),
                        entries("knowledge/plain/figures", PlainReader::figure),
                        entries("knowledge/plain/sheet", KnowledgeReader::statement)),
                entries("knowledge/rates", RateReader::rate),
                CodeFileReader.read(file("knowledge/codes.yaml")),
                entries("knowledge/invented", DistributionReader::distribution),
                WordsReader.read(file("knowledge/vocabulary.yaml")),
                decisions(),
                entries("knowledge/similarity.yaml", LikenessReader::rule),
                glossary);
        noStrangers();
        if (readable) {
            new KnowledgeChecks(knowledge, places, faults).check();
            new LedgerChecks(knowledge, places, faults).check();
            new PlainChecks(knowledge, places, faults).check();
        }
        faults.throwIfAny("knowledge");
        return knowledge;
    }

    private Glossary glossary(
            Collection<String> techniques, Collection<String> conditions, Collection<String> allergies) {
        Map<String, Collection<String>> lists =
                Map.of("techniques", techniques, "conditions", conditions, "allergies", allergies);
        return new GlossaryReader(lists).read(file("knowledge/glossary.yaml"));
    }

    private SortedMap<String, Quantity> quantities() {
        SortedMap<String, Quantity> all = new TreeMap<>();
        KnowledgeFiles.QUANTITIES.forEach(
                prefix -> all.putAll(entries(prefix, (id, reader) -> ProvenanceReader.quantity(id, reader))));
        return Collections.unmodifiableSortedMap(all);
    }

    /** Every entry of every file whose path starts with the prefix. */
    private <T> SortedMap<String, T> entries(String prefix, BiFunction<String, FieldReader, T> read) {
        SortedMap<String, T> all = new TreeMap<>();
        bundle.under(prefix, ".yaml").forEach((path, text) -> {
            FieldReader file = yaml(path, text);
            file.parts().forEach((id, reader) -> {
                all.put(id, read.apply(id, reader));
                place(file, id, id, path);
            });
        });
        return all;
    }

    /** An id in two files is a fault. */
    private void place(FieldReader file, String field, String id, String path) {
        String other = places.putIfAbsent(id, path);
        if (other != null) {
            file.fault(field, "\"" + id + "\" stands in " + other + " too");
        }
    }

    private FieldReader yaml(String path, String text) {
        FieldReader reader = YamlText.read(path, text, faults);
        readable &= reader.readable();
        return reader;
    }

    private Source source(String id, FieldReader reader) {
        Source source = new Source(
                id,
                reader.requiredText("cites"),
                reader.text("doi"),
                year(reader),
                reader.requiredWord("read", Source.Read.class),
                reader.requiredText("about"));
        reader.done();
        return source;
    }

    private static Statement statement(String id, FieldReader reader) {
        Statement statement = new Statement(
                id,
                reader.requiredText("says"),
                reader.requiredText("source"),
                reader.requiredWord("status", Standing.class),
                reader.requiredText("change"));
        reader.done();
        return statement;
    }

    private static OptionalInt year(FieldReader reader) {
        OptionalDouble year = reader.number("year");
        if (year.isEmpty()) {
            return OptionalInt.empty();
        }
        if (year.getAsDouble() != Math.rint(year.getAsDouble())) {
            reader.fault("year", "must be a whole number, is " + year.getAsDouble());
        }
        return OptionalInt.of((int) year.getAsDouble());
    }

    private Measurement measurement(String path, FieldReader reader) {
        Measurement measurement = new Measurement(
                path,
                reader.requiredText("says"),
                new PlausibleRange(
                        reader.requiredNumber("min"), reader.requiredNumber("max"), reader.requiredText("unit")),
                reader.number("sd"),
                ProvenanceReader.provenance(reader));
        if (measurement.range().min() >= measurement.range().max()) {
            reader.fault("min", "must be smaller than max");
        }
        reader.done();
        return measurement;
    }

    private SortedMap<String, Technique> techniques() {
        SortedMap<String, Technique> all = new TreeMap<>();
        bundle.under(TECHNIQUES, ".yaml").forEach((path, text) -> {
            Technique technique = technique(yaml(path, text));
            if (!technique.id().isEmpty() && !path.equals(fileOf(technique))) {
                faults.add(path, "must carry the name of its id, " + technique.id());
            }
            all.put(technique.id(), technique);
        });
        return all;
    }

    /** The file a technique stands in. */
    static String fileOf(Technique technique) {
        return TECHNIQUES + technique.id() + ".yaml";
    }

    private Technique technique(FieldReader reader) {
        String id = reader.requiredText("id");
        Technique technique = new Technique(
                id,
                reader.requiredText("says"),
                reader.requiredWord("family", Family.class),
                reader.texts("needs"),
                reader.texts("drugs"),
                reader.text("generator"),
                parts(reader, "quantities", (key, part) -> ProvenanceReader.quantity(id + "." + key, part)),
                parts(reader, "settings", ProvenanceReader::setting),
                reader.text("note"));
        reader.done();
        return technique;
    }

    private static <T> Map<String, T> parts(FieldReader reader, String field, BiFunction<String, FieldReader, T> read) {
        Map<String, T> parts = new TreeMap<>();
        reader.object(field)
                .ifPresent(all -> all.parts().forEach((key, part) -> parts.put(key, read.apply(key, part))));
        return Collections.unmodifiableMap(parts);
    }

    private Map<String, String> wordsOf(String path) {
        Map<String, String> words = new TreeMap<>();
        file(path).parts().forEach((id, reader) -> {
            words.put(id, reader.requiredText("says"));
            reader.done();
        });
        return Collections.unmodifiableMap(words);
    }

    /** By record and field, such as {@code Patient.ageYears}. */
    private SortedMap<String, FieldDecision> decisions() {
        SortedMap<String, FieldDecision> all = new TreeMap<>();
        file("knowledge/anonymity-fields.yaml").parts().forEach((record, reader) -> {
            reader.names()
                    .forEach(field -> all.put(record + "." + field, reader.requiredWord(field, FieldDecision.class)));
            reader.done();
        });
        return Collections.unmodifiableSortedMap(all);
    }

    private SortedMap<String, ChangeRecord> changes() {
        SortedMap<String, ChangeRecord> all = new TreeMap<>();
        bundle.under(CHANGES, ".yaml").forEach((path, text) -> {
            FieldReader reader = yaml(path, text);
            ChangeRecord change = ChangeReader.read(reader);
            if (!change.number().isEmpty() && !path.startsWith(CHANGES + change.number() + "-")) {
                faults.add(path, "must start with its number, " + change.number());
            }
            if (reader.has("number")) {
                place(reader, "number", change.number(), path);
            }
            all.put(change.number(), change);
        });
        return Collections.unmodifiableSortedMap(all);
    }

    private FieldReader file(String path) {
        String text = bundle.texts().get(path);
        if (text == null) {
            faults.add(path, "is missing");
            readable = false;
            return FieldReader.ofUnreadable(path + ":", faults);
        }
        return yaml(path, text);
    }

    /** A file nobody reads would be knowledge that silently does nothing. */
    private void noStrangers() {
        bundle.under("knowledge/", ".yaml").keySet().stream()
                .filter(path -> !KnowledgeFiles.known(path))
                .forEach(path -> faults.add(path, "is not a file the program knows"));
    }
}
