package org.tunica.knowledge;

import org.tunica.casefile.Word;

/** By what a technique closes a vein. */
public enum Family implements Word {
    HEAT,
    FOAM,
    MECHANOCHEMICAL,
    ADHESIVE,
    FOCUSED_ULTRASOUND
}
