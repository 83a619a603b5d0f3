package org.tunica.knowledge;

import org.tunica.casefile.Word;

/** How well a number or a rule is supported, strongest first. */
public enum Standing implements Word {
    /** A figure read in a publication (the source says whether whole, abstract or at second hand). */
    PUBLISHED,
    /** A recommendation of a society or an agency. */
    GUIDELINE,
    /** An explicit agreement of the people who govern these rules. */
    CONSENSUS,
    /** A definition or arithmetic of this project or this site. */
    LOCAL,
    /** From memory or common practice: to be checked before anyone signs. */
    UNVERIFIED
}
