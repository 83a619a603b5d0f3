package org.tunica.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * SHA-256 over texts, each written as its length in bytes, a colon, its UTF-8 bytes and a comma, so that no two lists of
 * texts give the same bytes and anybody can compute it again with a few lines of any language.
 */
final class Fingerprint {
    private Fingerprint() {}

    /** The digest in lower-case hexadecimal digits. */
    static String of(List<String> texts) {
        MessageDigest sha256 = sha256();
        for (String text : texts) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            sha256.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
            sha256.update(bytes);
            sha256.update((byte) ',');
        }
        return HexFormat.of().formatHex(sha256.digest());
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
