package org.tunica.replay;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 over several texts, each with its length before it, so that no two different rows of texts feed the same bytes. */
final class Digest {
    private final MessageDigest sha256;

    Digest() {
        try {
            sha256 = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    Digest and(byte[] bytes) {
        sha256.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
        sha256.update(bytes);
        return this;
    }

    Digest and(String text) {
        return and(text.getBytes(StandardCharsets.UTF_8));
    }

    /** {@code sha256:} and the digest in hexadecimal digits; asked once. */
    String text() {
        return "sha256:" + HexFormat.of().formatHex(sha256.digest());
    }

    static String of(String... texts) {
        Digest digest = new Digest();
        for (String text : texts) {
            digest.and(text);
        }
        return digest.text();
    }
}
