package org.tunica.invariants;

import io.cucumber.java.After;
import org.tunica.BlankOneOut;
import org.tunica.Tunica;
import org.tunica.features.Clinic;

/** Held after every scenario, whatever it is about: unknown never means safe. */
public final class NothingLooksBetterBlanked {
    private final Clinic clinic;

    public NothingLooksBetterBlanked(Clinic clinic) {
        this.clinic = clinic;
    }

    @After
    public void blankEachValueInTurn() {
        BlankOneOut.check(Tunica.shipped(), clinic.tree());
    }
}
