package org.tunica.accounts;

import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A link that was given out and not used yet.
 *
 * @param digest of its secret
 * @param until when it ends
 */
record WaitingLink(String digest, Instant until) {
    private static final Pattern WRITTEN = Pattern.compile("\\{link}([0-9]{1,18})\\.([0-9a-f]{64})");

    /** The link that stands in the place of a password, if one does. */
    static Optional<WaitingLink> in(String passwordHash) {
        Matcher matcher = WRITTEN.matcher(passwordHash);
        return matcher.matches()
                ? Optional.of(new WaitingLink(matcher.group(2), Instant.ofEpochMilli(Long.parseLong(matcher.group(1)))))
                : Optional.empty();
    }

    boolean opens(String secret, Instant now) {
        return now.isBefore(until) && Secret.matches(secret, digest);
    }

    /** As it stands in the place of a password. */
    @Override
    public String toString() {
        return "{link}" + until.toEpochMilli() + "." + digest;
    }
}
