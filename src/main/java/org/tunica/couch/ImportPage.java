package org.tunica.couch;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * Where a case that is a file, or a record of a patient, is put in.
 *
 * @param caseRef the name a record is to have here, as typed
 * @param text as it was put in
 * @param faults why it could not be taken over
 */
public record ImportPage(Frame frame, String caseRef, String text, List<String> faults) {
    public ImportPage {
        faults = List.copyOf(faults);
    }
}
