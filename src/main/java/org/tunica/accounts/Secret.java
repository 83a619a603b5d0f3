package org.tunica.accounts;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Random words nobody can guess, and their digests. */
final class Secret {
    /** So many that a plain digest is enough: there is nothing to try out. */
    private static final int BYTES = 32;

    private static final SecureRandom RANDOM = new SecureRandom();

    private Secret() {}

    static String fresh() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    static String digest(String secret) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Whether a digest is that of a secret; takes as long for a near miss as for a far one. */
    static boolean matches(String secret, String digest) {
        return MessageDigest.isEqual(
                digest(secret).getBytes(StandardCharsets.US_ASCII), digest.getBytes(StandardCharsets.US_ASCII));
    }
}
