package org.tunica.signing;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A person's private key on disk, {@code tunica-key/1}: sealed under a passphrase, with a head everybody can read. What the
 * head says is bound into the seal, so a file whose head was changed does not open.
 *
 * @param person user name
 * @param keyId name of the key among those of the person
 * @param iterations of PBKDF2
 */
public record KeyFile(
        String person, String keyId, String publicKey, int iterations, String salt, String nonce, String sealed) {
    /** The word a key file carries under {@code format}. */
    public static final String FORMAT = "tunica-key/1";

    /** The shortest passphrase taken, in characters; common practice, no source. */
    public static final int SHORTEST_PASSPHRASE = 12;

    private static final String DERIVATION = "PBKDF2-HMAC-SHA256";
    private static final String NO_NAME = "is no name: letters, digits, dot, hyphen, underscore, plus and @, no blank";
    private static final String CIPHER = "AES-256-GCM";

    /**
     * Seals a key.
     *
     * @throws FaultyInput when the passphrase is too short, or person or key have no name that could be signed
     */
    public static KeyFile seal(SigningKey key, char[] passphrase) {
        if (passphrase.length < SHORTEST_PASSPHRASE) {
            throw fault("passphrase", "must have at least " + SHORTEST_PASSPHRASE + " characters");
        }
        List.of(key.person(), key.keyId()).stream()
                .filter(name -> !Statement.isName(name))
                .forEach(name -> {
                    throw fault(name, NO_NAME);
                });
        SecureRandom random = new SecureRandom();
        String salt = drawn(random, Seal.SALT_BYTES);
        String nonce = drawn(random, Seal.NONCE_BYTES);
        KeyFile open = new KeyFile(key.person(), key.keyId(), key.publicKey(), Seal.ITERATIONS, salt, nonce, "");
        byte[] sealed = open.sealUnder(passphrase).close(key.secret());
        return new KeyFile(key.person(), key.keyId(), key.publicKey(), Seal.ITERATIONS, salt, nonce, base64(sealed));
    }

    /**
     * Opens the key.
     *
     * @throws FaultyInput when the passphrase is another, or the file was changed
     */
    public SigningKey open(char[] passphrase) {
        byte[] secret = sealUnder(passphrase)
                .open(bytes(sealed))
                .orElseThrow(() -> fault(
                        "key " + keyId + " of " + person,
                        "does not open: the passphrase is another one, or the file was changed"));
        try {
            return new SigningKey(person, keyId, Ed25519.privateKey(secret), publicKey);
        } finally {
            Arrays.fill(secret, (byte) 0);
        }
    }

    private Seal sealUnder(char[] passphrase) {
        String head = String.join("\n", FORMAT, person, keyId, publicKey, DERIVATION, "" + iterations, CIPHER);
        return new Seal(passphrase, bytes(salt), iterations, bytes(nonce), head.getBytes(StandardCharsets.UTF_8));
    }

    /** The file; {@link #read} reads it back. */
    public String toJson() {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("format", FORMAT)
                .put("person", person)
                .put("key", keyId)
                .put("publicKey", publicKey);
        tree.putObject("derivation")
                .put("name", DERIVATION)
                .put("iterations", iterations)
                .put("salt", salt);
        tree.putObject("seal").put("name", CIPHER).put("nonce", nonce).put("sealed", sealed);
        return JsonPage.of(tree);
    }

    /**
     * Reads a key file; nothing is opened yet.
     *
     * @param what the name of the input, for messages
     * @throws FaultyInput with every fault and its JSON path
     */
    public static KeyFile read(String what, byte[] json) {
        Faults faults = new Faults();
        FieldReader reader = new FieldReader(JsonText.parse(what, json), "$", faults);
        must(reader, "format", FORMAT);
        String person = reader.requiredText("person");
        String keyId = reader.requiredText("key");
        if (!Statement.isName(person) || !Statement.isName(keyId)) {
            reader.fault("person", "or key " + NO_NAME);
        }
        String publicKey = reader.requiredText("publicKey");
        FieldReader derivation = part(reader, "derivation");
        must(derivation, "name", DERIVATION);
        double iterations = derivation.requiredNumber("iterations");
        if (!(iterations >= Seal.ITERATIONS && iterations <= Seal.MOST_ITERATIONS)) {
            derivation.fault("iterations", "must be from " + Seal.ITERATIONS + " to " + Seal.MOST_ITERATIONS);
        }
        String salt = base64(derivation, "salt", Seal.SALT_BYTES);
        FieldReader seal = part(reader, "seal");
        must(seal, "name", CIPHER);
        String nonce = base64(seal, "nonce", Seal.NONCE_BYTES);
        String sealed = seal.requiredText("sealed");
        bytes(seal, "sealed", sealed);
        List.of(derivation, seal, reader).forEach(FieldReader::done);
        faults.throwIfAny(what);
        return new KeyFile(person, keyId, publicKey, (int) iterations, salt, nonce, sealed);
    }

    private static FieldReader part(FieldReader reader, String field) {
        return reader.required(field, reader.object(field)).orElseGet(() -> reader.emptyPart(field));
    }

    private static void must(FieldReader reader, String field, String word) {
        if (!reader.requiredText(field).equals(word)) {
            reader.fault(field, "must be " + word);
        }
    }

    private static String base64(FieldReader reader, String field, int length) {
        String written = reader.requiredText(field);
        if (bytes(reader, field, written).length != length) {
            reader.fault(field, "must be " + length + " bytes");
        }
        return written;
    }

    private static byte[] bytes(FieldReader reader, String field, String base64) {
        try {
            return bytes(base64);
        } catch (IllegalArgumentException e) {
            reader.fault(field, "is no base64");
            return new byte[0];
        }
    }

    private static byte[] bytes(String base64) {
        return Base64.getDecoder().decode(base64);
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }

    private static String drawn(SecureRandom random, int count) {
        byte[] bytes = new byte[count];
        random.nextBytes(bytes);
        return base64(bytes);
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("key", List.of(new Fault(place, says)));
    }
}
