package org.tunica.signing;

import org.tunica.casefile.Word;

/** What a signature is given for; one given for one purpose counts for no other. */
public enum Purpose implements Word {
    /** To let a release into use. */
    SIGN_OFF,
    /** To say that a person has read what a replay found. */
    ACKNOWLEDGE_REPLAY
}
