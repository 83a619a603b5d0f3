package org.tunica.fhir;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.tunica.casefile.Word;

/** JSON Schemas (2020-12) of what goes over the wire, so that a record system can check itself without this program. */
public enum HookSchema implements Word {
    DISCOVERY,
    REQUEST,
    RESPONSE,
    FEEDBACK;

    /** The schema. */
    public String text() {
        try (InputStream in = HookSchema.class.getResourceAsStream(word() + ".schema.json")) {
            if (in == null) {
                throw new IllegalStateException(word() + ".schema.json is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
