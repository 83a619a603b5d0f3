package org.tunica.knowledge;

import java.util.List;
import java.util.regex.Pattern;
import org.tunica.casefile.FieldReader;

/** Reads what the program is for and what could go wrong with it. */
final class SafetyReader {
    private static final Pattern HAZARD_ID = Pattern.compile("HZ-\\d{2}");

    private SafetyReader() {}

    static Hazard hazard(String id, FieldReader reader) {
        if (!HAZARD_ID.matcher(id).matches()) {
            reader.fault("hazard", "must be called by HZ- and two digits, is \"" + id + "\"");
        }
        Hazard hazard = new Hazard(
                id,
                reader.requiredText("hazard"),
                reader.requiredText("cause"),
                reader.requiredText("effect"),
                reader.text("held"),
                reader.requiredText("limits"));
        reader.done();
        return hazard;
    }

    static IntendedUse intendedUse(FieldReader reader) {
        IntendedUse use = new IntendedUse(
                reader.requiredText("says"),
                list(reader, "users"),
                list(reader, "uses"),
                list(reader, "notFor"),
                list(reader, "limits"));
        reader.done();
        return use;
    }

    private static List<String> list(FieldReader reader, String field) {
        List<String> texts = reader.texts(field);
        if (reader.readable() && texts.isEmpty()) {
            reader.fault(field, "at least one must be given");
        }
        return texts;
    }
}
