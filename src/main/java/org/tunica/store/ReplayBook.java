package org.tunica.store;

import java.util.Optional;

/** Replays that the servers over one database do together, one at a time. Safe for several threads and programs. */
public interface ReplayBook {
    /**
     * Begins one; an earlier one under the same id is forgotten.
     *
     * @throws OutOfDate when another runs
     */
    void begin(Actor by, SharedReplay replay);

    /** The one that runs. */
    Optional<SharedReplay> running();

    /** The one under this id. */
    Optional<SharedReplay> one(String id);

    /** Tells how far the one that runs is; who is behind another changes nothing. */
    void at(String id, long doneCount);

    /** Ends one with its result; the first to say so counts, and all say the same. */
    void finished(String id, String result);

    /** Ends one without a result. */
    void failed(String id, String why);
}
