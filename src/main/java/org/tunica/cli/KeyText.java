package org.tunica.cli;

import java.util.stream.Collectors;
import org.tunica.signing.KeyRing;
import org.tunica.signing.KnownKey;
import org.tunica.signing.SigningRole;

/** Keys as text. */
final class KeyText {
    private KeyText() {}

    static String all(KeyRing keys) {
        return keys.keys().isEmpty()
                ? "No key counts here."
                : keys.keys().stream().map(KeyText::line).collect(Collectors.joining("\n"));
    }

    static String one(KeyRing keys, String person, String keyId) {
        return keys.find(person, keyId).map(KeyText::line).orElseThrow();
    }

    private static String line(KnownKey key) {
        String roles = key.roles().stream().map(SigningRole::words).collect(Collectors.joining(", "));
        return "Key " + key.keyId() + " of " + key.person() + ": may sign as " + roles
                + key.withdrawn()
                        .map(end -> "; withdrawn at " + end.at() + ", "
                                + end.reason().word().replace('-', ' '))
                        .orElse("")
                + ".";
    }
}
