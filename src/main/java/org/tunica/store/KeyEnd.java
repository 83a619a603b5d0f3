package org.tunica.store;

import org.tunica.casefile.Word;

/** Why a key was ended. */
public enum KeyEnd implements Word {
    NO_LONGER_USED,
    LOST,
    /** Somebody else may have it. */
    COMPROMISED
}
