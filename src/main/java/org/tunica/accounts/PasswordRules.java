package org.tunica.accounts;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.tunica.casefile.Faults;

/**
 * What a password must be: long, rather than odd. Long enough without a second factor, and not longer than the hash looks at
 * (72 bytes, common practice of the hash in use; from memory, unverified).
 */
final class PasswordRules {
    static final int FEWEST_CHARACTERS = 12;
    static final int MOST_BYTES = 72;

    private static final int FEWEST_DIFFERENT = 5;

    private PasswordRules() {}

    static void check(String name, String password, Faults faults) {
        if (password.codePointCount(0, password.length()) < FEWEST_CHARACTERS) {
            faults.add("password", "must have at least " + FEWEST_CHARACTERS + " characters");
        }
        if (password.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
            faults.add("password", "must have at most " + MOST_BYTES + " characters, fewer where they are not ASCII");
        }
        if (password.chars().distinct().count() < FEWEST_DIFFERENT) {
            faults.add("password", "must have at least " + FEWEST_DIFFERENT + " different characters");
        }
        if (!name.isEmpty() && password.toLowerCase(Locale.ROOT).contains(name)) {
            faults.add("password", "must not hold the user name");
        }
    }
}
