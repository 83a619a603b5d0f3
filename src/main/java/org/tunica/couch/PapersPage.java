package org.tunica.couch;

import java.util.List;
import java.util.Optional;
import org.tunica.frame.Frame;
import org.tunica.pages.CourseView;

/**
 * The papers of a case.
 *
 * @param sessions sessions of the last plan of which a record can be made; none where the reader may not
 * @param mayFollow whether a visit can be recorded
 * @param course how it went; absent while no visit is kept
 */
public record PapersPage(
        Frame frame,
        String caseRef,
        List<CasePapers.Way> sessions,
        boolean mayFollow,
        Optional<CourseView> course,
        CasePapers papers) {
    public PapersPage {
        sessions = List.copyOf(sessions);
    }
}
