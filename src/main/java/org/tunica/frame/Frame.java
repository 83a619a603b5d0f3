package org.tunica.frame;

import java.util.Optional;

/**
 * What stands on every page.
 *
 * @param title heading of the page
 * @param csrf the token that forms of the page carry
 * @param signedIn who reads it, if that is known
 * @param caution the usual one
 * @param release of rules and knowledge in use, and where it stands
 */
public record Frame(String title, Csrf csrf, Optional<String> signedIn, String caution, String release) {
    /** The hidden field that tells a form of ours from one of somebody else. */
    public record Csrf(String name, String value) {}
}
