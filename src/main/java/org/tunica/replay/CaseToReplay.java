package org.tunica.replay;

import org.tunica.casefile.CaseFile;

/** A case that is not read yet, so that several threads can read at once. */
interface CaseToReplay {
    /**
     * Reads it with the words and ranges of a release.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault and its place
     */
    CaseFile read(ReleaseSide side);
}
