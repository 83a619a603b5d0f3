package org.tunica.paper;

/** How large a document is printed. */
public enum Lettering {
    /** For those who read such pages every day. */
    USUAL,
    /** For those who read it once, perhaps without their glasses: large, with room around it. */
    LARGE
}
