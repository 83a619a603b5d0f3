package org.tunica.session;

import org.tunica.casefile.Word;

/** How the patient lies while a segment is treated. */
public enum Position implements Word {
    SUPINE_HEAD_DOWN,
    SUPINE,
    PRONE
}
