package org.tunica.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.tunica.casefile.FieldReader;

/** Reads what codes mean, from the knowledge or from a site. */
final class CodeFileReader {
    /** An absolute URI without blanks. */
    private static final Pattern URI = Pattern.compile("[a-z][a-z0-9+.-]*:[^\\s\"<>]{1,200}");

    /** A code as the record standard spells one: no blank at its ends, none twice inside. */
    private static final Pattern CODE = Pattern.compile("[^\\s]+( [^\\s]+)*");

    private static final int LONGEST_CODE = 100;

    private CodeFileReader() {}

    static CodeFile read(FieldReader reader) {
        CodeFile read = new CodeFile(systems(reader), aliases(reader), reasons(reader));
        reader.done();
        return read;
    }

    private static Map<String, CodeFile.CodeSystem> systems(FieldReader reader) {
        Map<String, CodeFile.CodeSystem> systems = new LinkedHashMap<>();
        reader.object("systems")
                .ifPresent(all -> all.parts().forEach((name, system) -> {
                    String uri = system.requiredText("uri");
                    matching(system, "uri", uri, URI, "an absolute URI");
                    boolean on = system.required("on", system.flag("on")).orElse(false);
                    system.text("note");
                    system.done();
                    systems.put(name, new CodeFile.CodeSystem(uri, on));
                }));
        return systems;
    }

    private static List<CodeFile.Alias> aliases(FieldReader reader) {
        List<CodeFile.Alias> aliases = new ArrayList<>();
        reader.object("aliases")
                .ifPresent(all -> all.parts()
                        .forEach((kind, words) -> words.parts()
                                .forEach((word, bySystem) -> bySystem.names()
                                        .forEach(system -> bySystem.texts(system)
                                                .forEach(code -> {
                                                    matching(
                                                            bySystem,
                                                            system,
                                                            code,
                                                            CODE,
                                                            "a code without blanks around it");
                                                    aliases.add(new CodeFile.Alias(
                                                            kind, word, system, code, bySystem.path() + "." + system));
                                                })))));
        return aliases;
    }

    private static List<CodeFile.OverrideReason> reasons(FieldReader reader) {
        List<CodeFile.OverrideReason> reasons = new ArrayList<>();
        for (FieldReader reason : reader.objects("overrideReasons").orElse(List.of())) {
            String system = reason.requiredText("system");
            String code = reason.requiredText("code");
            matching(reason, "system", system, URI, "an absolute URI");
            matching(reason, "code", code, CODE, "a code without blanks around it");
            reasons.add(new CodeFile.OverrideReason(system, code, reason.requiredText("says")));
            reason.done();
        }
        return reasons;
    }

    private static void matching(FieldReader reader, String field, String text, Pattern pattern, String what) {
        boolean sound = text.length() <= LONGEST_CODE && pattern.matcher(text).matches();
        if (!sound && !text.isEmpty()) {
            reader.fault(field, "must be " + what + " of at most " + LONGEST_CODE + " characters");
        }
    }
}
