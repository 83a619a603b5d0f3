package org.tunica.couch;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * The papers of a case.
 *
 * @param sessions sessions of the last plan of which a record can be made; none where the reader may not
 * @param mayFollow whether a visit can be recorded
 */
public record PapersPage(
        Frame frame, String caseRef, List<CasePapers.Way> sessions, boolean mayFollow, CasePapers papers) {
    public PapersPage {
        sessions = List.copyOf(sessions);
    }
}
