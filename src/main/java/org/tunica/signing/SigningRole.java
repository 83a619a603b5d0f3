package org.tunica.signing;

import org.tunica.casefile.Word;

/** As what somebody signs. */
public enum SigningRole implements Word {
    CLINICAL_LEAD,
    SAFETY_OFFICER,
    REVIEWER;

    /** The word as it stands in a sentence. */
    public String words() {
        return word().replace('-', ' ');
    }
}
