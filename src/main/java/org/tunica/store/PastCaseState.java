package org.tunica.store;

import org.tunica.casefile.Word;

/** Where a past case stands on its way into the case base. */
public enum PastCaseState implements Word {
    /** Made anonymous; a person has yet to look at it. */
    WAITING,
    /** In the case base. */
    RELEASED,
    /** Never came in; its text is gone. */
    REFUSED,
    /** Was in and was taken out; its text is gone. */
    WITHDRAWN
}
