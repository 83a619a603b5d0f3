package org.tunica.web;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.tunica.accounts.PasswordHash;

/** The hash of passwords: bcrypt, by the library, with its name before it so that another one can follow. */
final class PasswordHashing implements PasswordHash {
    private static final String BCRYPT = "bcrypt";

    private final DelegatingPasswordEncoder encoder;

    /** @param cost as a power of two */
    PasswordHashing(int cost) {
        this.encoder = new DelegatingPasswordEncoder(BCRYPT, Map.of(BCRYPT, new BCryptPasswordEncoder(cost)));
        encoder.setDefaultPasswordEncoderForMatches(new NoPassword());
    }

    /** Whether what stands in the place of a hash is one; else no password opens it. */
    static boolean isPassword(String hash) {
        return hash.startsWith("{" + BCRYPT + "}");
    }

    PasswordEncoder encoder() {
        return encoder;
    }

    @Override
    public String of(String password) {
        return String.valueOf(encoder.encode(password));
    }

    @Override
    public boolean matches(String password, String hash) {
        return encoder.matches(password, hash);
    }

    /** What stands in the place of a password where there is none: a link that waits, or nothing. */
    private static final class NoPassword implements PasswordEncoder {
        @Override
        public String encode(@Nullable CharSequence password) {
            throw new UnsupportedOperationException();
        }

        @Override
        public boolean matches(@Nullable CharSequence password, @Nullable String hash) {
            return false;
        }
    }
}
