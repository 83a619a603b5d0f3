package org.tunica.store;

import java.time.Duration;
import java.util.Optional;

/**
 * Parts of long work that several programs share, each done by one of them. Whoever takes a part holds it for a while and must
 * say so again in time; time is that of the database. A row, and not a lock of the database, because a lock goes with its
 * connection: a pool may end that under a program that is at work, and a machine that hangs would hold it for hours. Safe for
 * several threads and programs.
 */
public interface PartBook {
    /**
     * Takes a part that nobody finished and nobody holds.
     *
     * @param work which work, by a digest of all it depends on
     * @param part number within it
     * @param cases digest of what the part is made from
     * @param owner who takes it
     * @param lease held for so long
     */
    boolean take(String work, long part, String cases, String owner, Duration lease);

    /** Holds what this owner took and did not finish for so long again. */
    void hold(String owner, Duration lease);

    /** Keeps the result of a part, unless there is one; what does not change with who computed it may come twice. */
    void keep(String work, long part, String cases, String result);

    /** The result of a part that is finished. */
    Optional<String> result(String work, long part, String cases);

    /** Forgets parts that nobody touched for so long. */
    void forget(Duration untouched);
}
