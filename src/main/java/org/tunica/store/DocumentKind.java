package org.tunica.store;

import org.tunica.casefile.Word;

/** What can be made from a case and is kept with it. */
public enum DocumentKind implements Word {
    ADVICE(Act.ADVICE_GIVEN),
    PLAN(Act.PLAN_MADE),
    DELIVERED(Act.DELIVERY_RECORDED),
    NOTE(Act.NOTE_WRITTEN),
    FOLLOW_UP(Act.FOLLOW_UP_RECORDED),
    CHOICE(Act.CHOICE_MADE),
    /** A case sent to the meeting, or its day set anew. */
    REFERRAL(Act.CASE_REFERRED),
    /** What the meeting decided. */
    DECISION(Act.DECISION_MADE);

    private final Act act;

    DocumentKind(Act act) {
        this.act = act;
    }

    Act act() {
        return act;
    }
}
