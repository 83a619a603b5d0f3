package org.tunica.pastcases;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** The digest that every Java program can make. */
final class Digests {
    private Digests() {}

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
