package org.tunica.signing;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Base64;
import java.util.Optional;
import org.tunica.casefile.FieldReader;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A statement and the signature under it.
 *
 * @param value of Ed25519 over the text of the statement, base64
 */
public record Signature(Statement statement, String value) {
    /** The first line of what is signed. */
    public static final String FORMAT = "tunica-signature/1";

    /** Whether a public key made it, over exactly this statement. */
    public boolean holdsUnder(String publicKey) {
        try {
            byte[] bytes = Base64.getDecoder().decode(value);
            return Ed25519.holds(Ed25519.publicKey(publicKey), Ed25519.bytes(statement.text()), bytes);
        } catch (IllegalArgumentException e) {
            return false; // no base64, or no key: nothing made it
        }
    }

    /** As JSON, field by field. */
    public ObjectNode tree() {
        return JsonNodeFactory.instance
                .objectNode()
                .put("purpose", statement.purpose().word())
                .put("release", statement.release())
                .put("digest", statement.digest())
                .put("person", statement.person())
                .put("role", statement.role().word())
                .put("key", statement.keyId())
                .put("at", statement.at().toString())
                .put("value", value);
    }

    /** Reads one as {@link #tree()} writes it; empty when its faults were noted. */
    public static Optional<Signature> read(FieldReader reader) {
        Purpose purpose = reader.requiredWord("purpose", Purpose.class);
        String release = reader.requiredText("release");
        String digest = reader.requiredText("digest");
        String person = reader.requiredText("person");
        SigningRole role = reader.requiredWord("role", SigningRole.class);
        String keyId = reader.requiredText("key");
        String at = reader.requiredText("at");
        String value = reader.requiredText("value");
        reader.done();
        try {
            Statement statement = new Statement(purpose, release, digest, person, role, keyId, Instant.parse(at));
            return Optional.of(new Signature(statement, value));
        } catch (DateTimeParseException e) {
            reader.fault("at", "is no time such as 2026-03-01T08:00:00Z");
        } catch (IllegalArgumentException e) {
            reader.fault("purpose", "belongs to no statement: " + e.getMessage());
        }
        return Optional.empty();
    }
}
