package org.tunica.callers;

/** A token that does not let its bearer in; the message says why, for the log alone, and holds nothing of the token. */
public final class TokenRefused extends Exception {
    TokenRefused(String why) {
        super(why);
    }
}
