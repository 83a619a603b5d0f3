package org.tunica.signing;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.regex.Pattern;

/**
 * What a signature covers: not a digest alone but who signs what, as what, when and what for.
 *
 * @param release version of the release it is about
 * @param digest {@code sha256:} and the digest of exactly what was seen
 * @param person user name
 * @param keyId name of the key among those of the person
 * @param at to the second
 */
public record Statement(
        Purpose purpose, String release, String digest, String person, SigningRole role, String keyId, Instant at) {
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._+@-]{0,63}");
    private static final Pattern DIGEST = Pattern.compile("sha256:[0-9a-f]{64}");

    public Statement {
        require("release", release, NAME);
        require("digest", digest, DIGEST);
        require("person", person, NAME);
        require("key", keyId, NAME);
        if (!at.equals(at.truncatedTo(ChronoUnit.SECONDS))) {
            throw new IllegalArgumentException("at must be a whole second, got " + at);
        }
    }

    /** Whether a person or a key can be called so. */
    static boolean isName(String name) {
        return NAME.matcher(name).matches();
    }

    private static void require(String field, String value, Pattern shape) {
        if (!shape.matcher(value).matches()) {
            throw new IllegalArgumentException(field + " must be written as " + shape + ", got \"" + value + "\"");
        }
    }

    /** The text that is signed, one line a field; no field can hold a line break, so no two statements give one text. */
    public String text() {
        return String.join(
                "\n",
                Signature.FORMAT,
                "purpose " + purpose.word(),
                "release " + release,
                "digest " + digest,
                "person " + person,
                "role " + role.word(),
                "key " + keyId,
                "at " + at,
                "");
    }
}
