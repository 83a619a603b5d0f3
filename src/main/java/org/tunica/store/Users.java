package org.tunica.store;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Users, their roles and public keys, and how their signing in went. */
public interface Users {
    /**
     * Keeps a user as given.
     *
     * @param user its version is the one this was made from
     * @return the user as kept
     * @throws OutOfDate when somebody changed the user meanwhile
     */
    User save(Actor by, User user);

    /** The user of that name. */
    Optional<User> find(String name);

    /** All users, the one changed last first. */
    List<User> all();

    /** Tells of a sign-in that succeeded; the count of failures ends. */
    User signedIn(String name);

    /**
     * Counts a sign-in that failed.
     *
     * @param most at this many in a row the user is locked
     * @param lock for so long
     */
    User signInFailed(String name, int most, Duration lock);

    /**
     * Adds a key.
     *
     * @throws OutOfDate when there is one of that id already
     */
    UserKey addKey(Actor by, UserKey key);

    /**
     * Ends a key.
     *
     * @throws org.tunica.casefile.FaultyInput when there is none of that id
     */
    UserKey withdrawKey(Actor by, String user, String keyId);

    /**
     * Ends a key and says why; of one that was ended already, says why anew.
     *
     * @throws org.tunica.casefile.FaultyInput when there is none of that id
     */
    UserKey withdrawKey(Actor by, String user, String keyId, KeyEnd why);

    /** Every key of every user, first to last change. */
    List<KeptKey> everyKey();

    /** The keys of a user, first to last change. */
    List<UserKey> keys(String user);
}
