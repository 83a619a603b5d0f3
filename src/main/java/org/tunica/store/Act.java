package org.tunica.store;

import org.tunica.casefile.Word;

/** What can be done that the audit trail tells of. */
public enum Act implements Word {
    CASE_SAVED,
    ADVICE_GIVEN,
    PLAN_MADE,
    DELIVERY_RECORDED,
    NOTE_WRITTEN,
    FOLLOW_UP_RECORDED,
    PAST_CASE_OFFERED,
    PAST_CASE_RELEASED,
    PAST_CASE_REFUSED,
    PAST_CASE_WITHDRAWN,
    USER_ADDED,
    USER_CHANGED,
    KEY_ADDED,
    KEY_WITHDRAWN,
    SIGNED_IN,
    SIGN_IN_FAILED,
    SIGNED_OUT,
    FEEDBACK_RECEIVED,
    VIEWED,
    EXPORTED,
    BACKED_UP,
    RESTORED
}
