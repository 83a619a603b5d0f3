package org.tunica.signing;

import java.security.KeyPair;
import java.security.PrivateKey;
import java.util.Base64;

/** A person's key, opened and ready to sign. It prints nothing of its private half. */
public final class SigningKey {
    private final String person;
    private final String keyId;
    private final PrivateKey privateKey;
    private final String publicKey;

    SigningKey(String person, String keyId, PrivateKey privateKey, String publicKey) {
        this.person = person;
        this.keyId = keyId;
        this.privateKey = privateKey;
        this.publicKey = publicKey;
    }

    /** A new key that nobody else has. */
    public static SigningKey fresh(String person, String keyId) {
        KeyPair pair = Ed25519.pair();
        return new SigningKey(person, keyId, pair.getPrivate(), Ed25519.written(pair.getPublic()));
    }

    /**
     * Signs a statement.
     *
     * @throws IllegalArgumentException when it is another person's statement or names another key
     */
    public Signature sign(Statement statement) {
        if (!statement.person().equals(person) || !statement.keyId().equals(keyId)) {
            throw new IllegalArgumentException("key " + keyId + " of " + person + " cannot sign for "
                    + statement.person() + " with key " + statement.keyId());
        }
        byte[] value = Ed25519.sign(privateKey, Ed25519.bytes(statement.text()));
        return new Signature(statement, Base64.getEncoder().encodeToString(value));
    }

    /** User name of its person. */
    public String person() {
        return person;
    }

    /** Its name among the keys of that person. */
    public String keyId() {
        return keyId;
    }

    /** The half everybody may know. */
    public String publicKey() {
        return publicKey;
    }

    /** The half nobody else may know, as PKCS#8. */
    byte[] secret() {
        return privateKey.getEncoded();
    }

    @Override
    public String toString() {
        return "SigningKey[" + person + ", " + keyId + "]";
    }
}
