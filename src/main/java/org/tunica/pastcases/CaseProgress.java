package org.tunica.pastcases;

/** Told now and then how far a long reading or writing is. */
@FunctionalInterface
public interface CaseProgress {
    /** Tells nobody. */
    CaseProgress NONE = (doneBytes, allBytes, cases) -> {};

    /**
     * How far it is.
     *
     * @param doneBytes of the file read so far
     * @param allBytes the file is long
     * @param cases read so far
     */
    void at(long doneBytes, long allBytes, long cases);
}
