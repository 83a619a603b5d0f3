package org.tunica.signing;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.spec.InvalidKeySpecException;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;

/** The signature scheme of RFC 8032 as the platform has it. A public key is written as base64 of its X.509 encoding. */
final class Ed25519 {
    private static final String NAME = "Ed25519";

    private Ed25519() {}

    static KeyPair pair() {
        return known(() -> KeyPairGenerator.getInstance(NAME).generateKeyPair());
    }

    static String written(PublicKey key) {
        return Base64.getEncoder().encodeToString(key.getEncoded());
    }

    /** @throws IllegalArgumentException when it is no such key */
    static PublicKey publicKey(String written) {
        byte[] encoded = Base64.getDecoder().decode(written);
        return known(() -> KeyFactory.getInstance(NAME).generatePublic(new X509EncodedKeySpec(encoded)));
    }

    /** @throws IllegalArgumentException when it is no such key */
    static PrivateKey privateKey(byte[] pkcs8) {
        return known(() -> KeyFactory.getInstance(NAME).generatePrivate(new PKCS8EncodedKeySpec(pkcs8)));
    }

    static byte[] sign(PrivateKey key, byte[] message) {
        return known(() -> {
            java.security.Signature signing = java.security.Signature.getInstance(NAME);
            signing.initSign(key);
            signing.update(message);
            return signing.sign();
        });
    }

    /** Whether the signature is of that key over that message; what is no signature at all is not. */
    static boolean holds(PublicKey key, byte[] message, byte[] signature) {
        try {
            java.security.Signature checking = java.security.Signature.getInstance(NAME);
            checking.initVerify(key);
            checking.update(message);
            return checking.verify(signature);
        } catch (java.security.SignatureException e) {
            return false;
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private interface Step<T> {
        T take() throws GeneralSecurityException;
    }

    private static <T> T known(Step<T> step) {
        try {
            return step.take();
        } catch (InvalidKeySpecException e) {
            throw new IllegalArgumentException("is no Ed25519 key", e);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }
}
