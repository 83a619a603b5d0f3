package org.tunica.knowledge;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.tunica.casefile.FieldReader;

/** Reads knowledge/glossary.yaml. */
final class GlossaryReader {
    private static final Pattern FINDING = Pattern.compile("[a-z][a-z0-9-]*");

    /** Lists that stand elsewhere in knowledge/, by the word the glossary uses for them. */
    private final Map<String, Collection<String>> lists;

    GlossaryReader(Map<String, Collection<String>> lists) {
        this.lists = lists;
    }

    Glossary read(FieldReader root) {
        Map<String, GlossaryField> fields = new LinkedHashMap<>();
        FieldReader all = root.object("fields").orElseGet(() -> root.emptyPart("fields"));
        List<String> nouns = nouns(all);
        all.parts().forEach((id, reader) -> fields.put(id, field(fields.size(), id, reader, nouns)));
        Glossary glossary = new Glossary(fields, findings(root), settings(root));
        root.done();
        return glossary;
    }

    private static List<String> nouns(FieldReader all) {
        return all.parts().values().stream()
                .flatMap(reader -> reader.text("noun").stream())
                .toList();
    }

    private GlossaryField field(int place, String id, FieldReader reader, List<String> nouns) {
        GlossaryField.Kind kind = reader.requiredWord("kind", GlossaryField.Kind.class);
        boolean flag = kind == GlossaryField.Kind.FLAG;
        boolean set = kind == GlossaryField.Kind.SET;
        boolean listed = set || kind == GlossaryField.Kind.WORD;
        GlossaryField field = new GlossaryField(
                place,
                id,
                kind,
                flag ? "" : reader.requiredText("name"),
                set ? reader.requiredText("verb") : reader.text("verb").orElse("is"),
                set ? reader.requiredText("verbNot") : reader.text("verbNot").orElse("is not"),
                reader.requiredText("noun"),
                flag ? reader.requiredText("yes") : "",
                flag ? reader.requiredText("no") : "",
                reader.text("unit"),
                listed ? values(reader, nouns) : List.of());
        if (kind == GlossaryField.Kind.NUMBER && field.unit().isEmpty()) {
            reader.fault("unit", "a number needs its unit");
        }
        reader.done();
        return field;
    }

    private List<String> values(FieldReader reader, List<String> nouns) {
        if (reader.isList("values")) {
            return reader.texts("values");
        }
        String list = reader.requiredText("values");
        if (list.equals("nouns")) {
            return nouns;
        }
        if (!lists.containsKey(list)) {
            reader.fault("values", "must be a list, or one of " + lists.keySet() + " or nouns");
            return List.of();
        }
        return List.copyOf(lists.get(list));
    }

    private static Map<String, String> findings(FieldReader root) {
        Map<String, String> findings = new LinkedHashMap<>();
        FieldReader all = root.object("findings").orElseGet(() -> root.emptyPart("findings"));
        all.names().forEach(id -> {
            findings.put(id, all.requiredText(id));
            if (!FINDING.matcher(id).matches()) {
                all.fault(id, "a finding is named in small letters, digits and hyphens");
            }
        });
        return findings;
    }

    private static Map<String, Glossary.SettingName> settings(FieldReader root) {
        Map<String, Glossary.SettingName> settings = new LinkedHashMap<>();
        FieldReader all = root.object("settings").orElseGet(() -> root.emptyPart("settings"));
        all.parts().forEach((id, reader) -> {
            settings.put(id, new Glossary.SettingName(id, reader.requiredText("name"), reader.requiredText("unit")));
            reader.done();
        });
        return settings;
    }
}
