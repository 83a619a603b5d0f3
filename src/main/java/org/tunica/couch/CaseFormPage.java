package org.tunica.couch;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * A case as a form.
 *
 * @param action where it is sent
 * @param seen the version it was made from; nought for a new case
 * @param nameFixed whether the name of the case stands already
 * @param notes what is to be known before filling it in, such as what of a record was not taken over
 */
public record CaseFormPage(
        Frame frame, String action, long seen, boolean nameFixed, List<String> notes, CaseForm form) {
    public CaseFormPage {
        notes = List.copyOf(notes);
    }

    /** Whether there is room for another leg. */
    public boolean mayAddLeg() {
        return form.legs().size() < FormStep.MOST_LEGS;
    }

    /** How many things are to be mended, in words. */
    public String toMend() {
        int count = form.mends().size();
        return count == 1
                ? "One thing is to be mended; nothing was saved"
                : count + " things are to be mended; nothing was saved";
    }
}
