package org.tunica.signing;

/** What nobody should be able to do: one private key under two names. */
public final class SigningKeys {
    private SigningKeys() {}

    /** The same private half for another person. */
    public static SigningKey renamed(SigningKey key, String person) {
        return new SigningKey(person, key.keyId(), Ed25519.privateKey(key.secret()), key.publicKey());
    }
}
