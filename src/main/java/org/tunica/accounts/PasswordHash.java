package org.tunica.accounts;

/** Makes of a password what may be kept of it. */
public interface PasswordHash {
    /** The hash of a password, slow to make and never the same twice. */
    String of(String password);

    /** Whether a hash was made of this password. */
    boolean matches(String password, String hash);
}
