package org.tunica.treatment;

import org.tunica.casefile.Word;

/** How a treated vein stands at a scan. */
public enum ClosureState implements Word {
    /** The length found open is not recorded. */
    NOT_RECORDED,
    /** Closed by the definition named. */
    CLOSED,
    /** Not closed by it, and not open all along. */
    PARTLY_OPEN,
    /** It was closed at an earlier scan and is open over more than a stump (common practice, no source). */
    REOPENED,
    /** Open all along. */
    OPEN
}
