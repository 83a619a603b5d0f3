package org.tunica.governance;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.signing.JsonPage;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes a manifest and reads it back; a text that would be written otherwise is refused, so one manifest has one digest. */
final class ManifestText {
    private ManifestText() {}

    static String of(Manifest manifest) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("format", Manifest.FORMAT)
                .put("version", manifest.version())
                .put("title", manifest.title())
                .put("program", manifest.program())
                .put("builtOn", manifest.builtOn().toString());
        texts(tree, "authors", manifest.authors());
        texts(tree, "changes", manifest.changes());
        manifest.effectiveFrom().ifPresent(day -> tree.put("effectiveFrom", day.toString()));
        manifest.effectiveTo().ifPresent(day -> tree.put("effectiveTo", day.toString()));
        tree.put("reviewBy", manifest.reviewBy().toString())
                .put("rules", manifest.rules())
                .put("replay", manifest.replay());
        texts(tree, "leftOut", manifest.leftOut());
        ArrayNode files = tree.putArray("files");
        manifest.files()
                .forEach(file -> files.addObject().put("path", file.path()).put("sha256", file.sha256()));
        return JsonPage.of(tree);
    }

    private static void texts(ObjectNode tree, String field, List<String> texts) {
        ArrayNode list = tree.putArray(field);
        texts.forEach(list::add);
    }

    static Manifest read(String what, String text) {
        Faults faults = new Faults();
        FieldReader reader = new FieldReader(JsonText.parse(what, text.getBytes(StandardCharsets.UTF_8)), "$", faults);
        if (!reader.requiredText("format").equals(Manifest.FORMAT)) {
            reader.fault("format", "must be " + Manifest.FORMAT);
        }
        Manifest manifest = new Manifest(
                reader.requiredText("version"),
                reader.requiredText("title"),
                reader.requiredText("program"),
                requiredDay(reader, "builtOn"),
                reader.texts("authors"),
                reader.texts("changes"),
                day(reader, "effectiveFrom"),
                day(reader, "effectiveTo"),
                requiredDay(reader, "reviewBy"),
                reader.requiredText("rules"),
                reader.requiredText("replay"),
                reader.texts("leftOut"),
                reader.required("files", reader.objects("files")).orElse(List.of()).stream()
                        .map(ManifestText::entry)
                        .toList());
        reader.done();
        faults.throwIfAny(what);
        if (!manifest.text().equals(text)) {
            throw new FaultyInput(what, List.of(new Fault("$", "is not written as this program writes it")));
        }
        return manifest;
    }

    private static Manifest.Entry entry(FieldReader reader) {
        Manifest.Entry entry = new Manifest.Entry(reader.requiredText("path"), reader.requiredText("sha256"));
        reader.done();
        return entry;
    }

    private static LocalDate requiredDay(FieldReader reader, String field) {
        return reader.required(field, day(reader, field)).orElse(LocalDate.EPOCH);
    }

    private static Optional<LocalDate> day(FieldReader reader, String field) {
        return reader.text(field).flatMap(written -> {
            try {
                return Optional.of(LocalDate.parse(written));
            } catch (DateTimeParseException e) {
                reader.fault(field, "is no day such as 2026-03-01");
                return Optional.empty();
            }
        });
    }
}
