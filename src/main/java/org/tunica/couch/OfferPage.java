package org.tunica.couch;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * Where a finished case is offered as a past case.
 *
 * @param finished whether a delivery and a follow-up are kept
 * @param invented whether nobody was ever like the case
 * @param typed what was typed
 * @param faults why it could not be offered
 */
public record OfferPage(
        Frame frame, String caseRef, boolean finished, boolean invented, Typed typed, List<String> faults) {
    public OfferPage {
        faults = List.copyOf(faults);
    }

    /** What was typed. */
    public record Typed(String site, String year, String note) {}
}
