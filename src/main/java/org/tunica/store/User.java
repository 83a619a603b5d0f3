package org.tunica.store;

import java.time.Instant;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A user. Immutable.
 *
 * @param name lower case, as typed at sign-in
 * @param version counts every change; nought for a user that was never kept
 * @param passwordHash as the password library wrote it; empty where sign-in is elsewhere
 * @param failedSignIns since the last one that succeeded or locked
 * @param lockedUntil when sign-in is possible again, if it is not now
 */
public record User(
        String name,
        long version,
        UserState state,
        Set<Role> roles,
        String passwordHash,
        long failedSignIns,
        Optional<Instant> lockedUntil) {

    public User {
        roles = Collections.unmodifiableSet(new TreeSet<>(roles));
    }

    /** A user that was never kept. */
    public static User fresh(String name, Set<Role> roles, String passwordHash) {
        return new User(name, 0, UserState.ACTIVE, roles, passwordHash, 0, Optional.empty());
    }

    /** The same user with other roles. */
    public User with(Set<Role> others) {
        return new User(name, version, state, others, passwordHash, failedSignIns, lockedUntil);
    }

    /** The same user with another password; a new one also ends a lock. */
    public User withPasswordHash(String hash) {
        return new User(name, version, state, roles, hash, 0, Optional.empty());
    }

    /** The same user, who may not sign in any more or may again. */
    public User in(UserState other) {
        return new User(name, version, other, roles, passwordHash, failedSignIns, lockedUntil);
    }

    User signIns(long failed, Optional<Instant> locked) {
        return new User(name, version, state, roles, passwordHash, failed, locked);
    }

    /** Without the hash: this text may land in a log. */
    @Override
    public String toString() {
        return "User[" + name + ", version " + version + ", " + state.word() + ", " + Words.written(roles) + "]";
    }
}
