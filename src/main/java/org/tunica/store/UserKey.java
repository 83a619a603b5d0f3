package org.tunica.store;

/**
 * A public key of a user; no private key ever comes here.
 *
 * @param keyId its name among the keys of that user
 * @param purpose what it is for, for example {@code sign-release}
 * @param publicKey as text
 * @param state whether it counts
 */
public record UserKey(String user, String keyId, String purpose, String publicKey, KeyState state) {
    /** A key that counts. */
    public UserKey(String user, String keyId, String purpose, String publicKey) {
        this(user, keyId, purpose, publicKey, KeyState.IN_USE);
    }
}
