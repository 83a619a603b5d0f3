package org.tunica.store;

import org.tunica.casefile.Word;

/** Whether a user may sign in. Nobody is removed: the audit trail names them. */
public enum UserState implements Word {
    ACTIVE,
    LEFT
}
