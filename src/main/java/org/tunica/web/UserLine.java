package org.tunica.web;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tunica.accounts.GivenLink;
import org.tunica.casefile.Word;
import org.tunica.store.User;

/**
 * A user as the administrator sees one; never the password, not even its hash.
 *
 * @param hasPassword false while a link waits to be used
 * @param lockedUntil after too many failures; absent when not locked
 */
record UserLine(
        String name,
        long version,
        String state,
        List<String> roles,
        boolean hasPassword,
        long failedSignIns,
        Optional<Instant> lockedUntil) {

    static UserLine of(User user, Instant now) {
        return new UserLine(
                user.name(),
                user.version(),
                user.state().word(),
                user.roles().stream().map(Word::word).toList(),
                PasswordHashing.isPassword(user.passwordHash()),
                user.failedSignIns(),
                user.lockedUntil().filter(now::isBefore));
    }

    /**
     * A link to hand to a user; it is shown this once.
     *
     * @param address of the page
     * @param until when it ends
     */
    record Handed(String name, String address, Instant until) {
        static Handed of(String name, String server, GivenLink link) {
            return new Handed(name, server + link.path(), link.until());
        }
    }
}
