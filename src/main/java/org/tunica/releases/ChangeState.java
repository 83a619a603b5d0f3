package org.tunica.releases;

import org.tunica.casefile.Word;

/** Where a proposed change stands that was handed in. */
public enum ChangeState implements Word {
    IN_REVIEW,
    WITHDRAWN,
    /** A release that was built brings it. */
    IN_A_RELEASE;

    /** The state in words. */
    public String words() {
        return word().replace('-', ' ');
    }
}
