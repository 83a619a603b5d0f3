package org.tunica.store;

import org.tunica.casefile.Word;

/** Whether a key counts. None is removed: what it signed must stay checkable. */
public enum KeyState implements Word {
    IN_USE,
    WITHDRAWN
}
