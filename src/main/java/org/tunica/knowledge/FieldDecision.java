package org.tunica.knowledge;

import org.tunica.casefile.Word;

/** What becomes of a field when the person is taken out of a case. */
public enum FieldDecision implements Word {
    /** Stays as it is. */
    KEPT,
    /** Stays with its own fields, each decided on its own. */
    PARTS,
    /** Stays, rounded to what is measured. */
    ROUNDED,
    /** Stays as a band in place of the number. */
    BANDED,
    /** A new name in place of the old one. */
    RENAMED,
    /** Goes into the notes as far as its words may stay. */
    SCRUBBED,
    /** Does not get in. */
    DROPPED
}
