package org.tunica.signing;

import java.time.Instant;
import org.tunica.casefile.Word;

/** That a key was ended, when and why. */
public record Withdrawal(Instant at, Reason reason) {

    /** Why a key ends. */
    public enum Reason implements Word {
        /** The person signs no more, or with another key. */
        NO_LONGER_USED,
        /** Nobody has it any more. */
        LOST,
        /** Somebody else may have it: nothing it ever signed counts. */
        COMPROMISED
    }
}
