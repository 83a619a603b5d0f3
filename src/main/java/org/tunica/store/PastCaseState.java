package org.tunica.store;

import org.tunica.casefile.Word;

/** Where a past case stands on its way into the case base. */
public enum PastCaseState implements Word {
    /** Made anonymous; a person has yet to look at it. */
    WAITING(Act.PAST_CASE_OFFERED),
    /** In the case base. */
    RELEASED(Act.PAST_CASE_RELEASED),
    /** Never came in; its text is gone. */
    REFUSED(Act.PAST_CASE_REFUSED),
    /** Was in and was taken out; its text is gone. */
    WITHDRAWN(Act.PAST_CASE_WITHDRAWN);

    private final Act act;

    PastCaseState(Act act) {
        this.act = act;
    }

    Act act() {
        return act;
    }

    boolean gone() {
        return this == REFUSED || this == WITHDRAWN;
    }
}
