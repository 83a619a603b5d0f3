package org.tunica.signing;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The public keys somebody trusts, {@code tunica-keys/1}. Immutable. */
public record KeyRing(List<KnownKey> keys) {
    /** The word a file of public keys carries under {@code format}. */
    public static final String FORMAT = "tunica-keys/1";

    public KeyRing {
        keys = List.copyOf(keys);
    }

    /** A key by person and name. */
    public Optional<KnownKey> find(String person, String keyId) {
        return keys.stream()
                .filter(key -> key.person().equals(person) && key.keyId().equals(keyId))
                .findFirst();
    }

    /** The ring as it counted at a moment, before anybody knew what became of its keys later. */
    public KeyRing asOf(Instant moment) {
        return new KeyRing(keys.stream().map(key -> key.asOf(moment)).toList());
    }

    /** Everybody who holds or ever held a public key. */
    public Set<String> holders(String publicKey) {
        return keys.stream()
                .filter(key -> key.publicKey().equals(publicKey))
                .map(KnownKey::person)
                .collect(Collectors.toSet());
    }

    /** Every public key a person holds or ever held. */
    public Set<String> keysOf(String person) {
        return keys.stream()
                .filter(key -> key.person().equals(person))
                .map(KnownKey::publicKey)
                .collect(Collectors.toSet());
    }

    /**
     * Reads a file of public keys.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public static KeyRing read(String what, byte[] json) {
        Faults faults = new Faults();
        FieldReader reader = new FieldReader(JsonText.parse(what, json), "$", faults);
        if (!reader.requiredText("format").equals(FORMAT)) {
            reader.fault("format", "must be " + FORMAT);
        }
        List<KnownKey> keys = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (FieldReader part : reader.required("keys", reader.objects("keys")).orElse(List.of())) {
            KnownKey key = key(part);
            keys.add(key);
            if (!names.add(key.person() + " " + key.keyId())) {
                part.fault("key", "stands twice for this person");
            }
        }
        reader.done();
        faults.throwIfAny(what);
        return new KeyRing(keys);
    }

    private static KnownKey key(FieldReader reader) {
        String person = reader.requiredText("person");
        String keyId = reader.requiredText("key");
        String publicKey = reader.requiredText("publicKey");
        try {
            Ed25519.publicKey(publicKey);
        } catch (IllegalArgumentException e) {
            reader.fault("publicKey", "is no Ed25519 key in base64");
        }
        Set<SigningRole> roles = reader.words("roles", SigningRole.class).orElse(Set.of());
        Optional<Withdrawal> withdrawn = reader.object("withdrawn").flatMap(KeyRing::withdrawal);
        reader.done();
        return new KnownKey(person, keyId, publicKey, roles, withdrawn);
    }

    private static Optional<Withdrawal> withdrawal(FieldReader reader) {
        Withdrawal.Reason reason = reader.requiredWord("reason", Withdrawal.Reason.class);
        String at = reader.requiredText("at");
        reader.done();
        try {
            return Optional.of(new Withdrawal(Instant.parse(at), reason));
        } catch (DateTimeParseException e) {
            reader.fault("at", "is no time such as 2026-03-01T08:00:00Z");
            return Optional.empty();
        }
    }

    /** The file; {@link #read} reads it back. */
    public String toJson() {
        ObjectNode tree = JsonNodeFactory.instance.objectNode().put("format", FORMAT);
        ArrayNode list = tree.putArray("keys");
        keys.forEach(key -> list.add(tree(key)));
        return JsonPage.of(tree);
    }

    private static ObjectNode tree(KnownKey key) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("person", key.person())
                .put("key", key.keyId())
                .put("publicKey", key.publicKey());
        ArrayNode roles = tree.putArray("roles");
        key.roles().forEach(role -> roles.add(role.word()));
        key.withdrawn()
                .ifPresent(end -> tree.putObject("withdrawn")
                        .put("reason", end.reason().word())
                        .put("at", end.at().toString()));
        return tree;
    }
}
