package org.tunica.signing;

import java.security.GeneralSecurityException;
import java.util.Arrays;
import java.util.Optional;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.PBEKeySpec;
import javax.crypto.spec.SecretKeySpec;

/** A passphrase turned into a key that closes and opens a secret, bound to the text it stands under. */
final class Seal {
    /** As the password page of the OWASP cheat sheets asked for PBKDF2-HMAC-SHA256 in 2023; from memory, unverified. */
    static final int ITERATIONS = 600_000;

    /** More would only keep the program busy. */
    static final int MOST_ITERATIONS = 10_000_000;

    static final int SALT_BYTES = 16;

    /** As NIST SP 800-38D recommends for GCM. */
    static final int NONCE_BYTES = 12;

    private static final int KEY_BITS = 256;
    private static final int TAG_BITS = 128;

    private final SecretKeySpec key;
    private final GCMParameterSpec parameters;
    private final byte[] head;

    Seal(char[] passphrase, byte[] salt, int iterations, byte[] nonce, byte[] head) {
        byte[] derived = derived(passphrase, salt, iterations, KEY_BITS);
        this.key = new SecretKeySpec(derived, "AES");
        Arrays.fill(derived, (byte) 0);
        this.parameters = new GCMParameterSpec(TAG_BITS, nonce);
        this.head = head.clone();
    }

    /** PBKDF2-HMAC-SHA256 of RFC 8018. */
    static byte[] derived(char[] passphrase, byte[] salt, int iterations, int bits) {
        PBEKeySpec spec = new PBEKeySpec(passphrase, salt, iterations, bits);
        try {
            return SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
                    .generateSecret(spec)
                    .getEncoded();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        } finally {
            spec.clearPassword();
        }
    }

    byte[] close(byte[] secret) {
        try {
            return cipher(Cipher.ENCRYPT_MODE).doFinal(secret);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The secret; empty when the passphrase is another, or anything was changed. */
    Optional<byte[]> open(byte[] sealed) {
        try {
            return Optional.of(cipher(Cipher.DECRYPT_MODE).doFinal(sealed));
        } catch (AEADBadTagException e) {
            return Optional.empty();
        } catch (GeneralSecurityException e) {
            throw new IllegalArgumentException("no seal of this kind", e);
        }
    }

    private Cipher cipher(int mode) throws GeneralSecurityException {
        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(mode, key, parameters);
        cipher.updateAAD(head);
        return cipher;
    }
}
