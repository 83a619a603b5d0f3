package org.tunica.store;

import java.util.List;
import java.util.Optional;

/** Past cases, waiting for a person or released into the case base, which can always be built again from here. */
public interface PastCaseShelf {
    /**
     * Lets a past case wait for a person.
     *
     * @throws OutOfDate when there is one of that id already
     */
    KeptPastCase offer(Actor by, String id, String line);

    /**
     * Lets another text wait in place of one.
     *
     * @param seen the case as it was looked at
     * @throws OutOfDate when it no longer waits as it was seen
     */
    KeptPastCase rewrite(Actor by, KeptPastCase seen, String line);

    /**
     * Releases a case that waits.
     *
     * @param seen the case as it was looked at
     * @param line the past case it becomes
     * @throws OutOfDate when it no longer waits as it was seen
     */
    KeptPastCase release(Actor by, KeptPastCase seen, String line);

    /**
     * Takes in a past case that was released elsewhere.
     *
     * @throws OutOfDate when there is one of that id already, or ever was
     */
    KeptPastCase bringIn(Actor by, String id, String line);

    /**
     * Refuses a case that waits and forgets its text.
     *
     * @throws OutOfDate when it does not wait
     */
    KeptPastCase refuse(Actor by, String id);

    /**
     * Takes a released case out of the case base and forgets its text.
     *
     * @throws OutOfDate when it is not released
     */
    KeptPastCase withdraw(Actor by, String id);

    /** One past case. */
    Optional<KeptPastCase> one(String id);

    /** What changed after an audit number, in order, at most so many: a case base keeps up by asking again from the last. */
    List<KeptPastCase> since(long auditNumber, int most);

    /** Past cases in a state, the one changed last first. */
    List<KeptPastCase> in(PastCaseState state, Page page);
}
