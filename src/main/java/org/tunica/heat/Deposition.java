package org.tunica.heat;

/** How the power of one cross-section spreads over its shells. */
interface Deposition {
    /** Puts a line power into the shells of the slice. */
    void deposit(double lineWPerM, Bioheat slice);
}
