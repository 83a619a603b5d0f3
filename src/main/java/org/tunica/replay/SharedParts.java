package org.tunica.replay;

import java.util.Optional;

/**
 * Where programs that work at one replay meet: each takes parts nobody is at, and finds what the others finished. A part whose
 * program died is free again after a while. Safe for several threads.
 */
public interface SharedParts {
    /**
     * One part.
     *
     * @param replay digest of both releases and what is replayed
     * @param number from 0, over all cases
     * @param cases digest of what its cases are read from
     */
    record Part(String replay, int number, String cases) {}

    /** Its result as a line of JSON, when somebody finished it. */
    Optional<String> find(Part part);

    /** Takes a part; false when it is finished, or another program is at it. */
    boolean take(Part part);

    /** Keeps the result of a part that was taken. */
    void keep(Part part, String line);
}
