package org.tunica.accounts;

import java.time.Instant;

/**
 * A link to be handed to one person.
 *
 * @param path of the page it leads to, on this server; holds the secret, which is kept nowhere else
 * @param until when it ends
 */
public record GivenLink(String path, Instant until) {
    /** Without the secret: this text may land in a log. */
    @Override
    public String toString() {
        return "GivenLink[until " + until + "]";
    }
}
