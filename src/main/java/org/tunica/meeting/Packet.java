package org.tunica.meeting;

import java.util.List;
import org.tunica.casefile.CaseFile;
import org.tunica.paper.Document;
import org.tunica.plan.Advice;

/**
 * What the meeting sees of a case.
 *
 * @param meetingId the name it goes by
 * @param named the case as it is under the names of the packet; never shown itself
 * @param advice for it
 * @param document all that is shown
 */
record Packet(String meetingId, CaseFile named, Advice advice, Document document) {
    /** The segments in order, by their names in the packet. */
    List<String> refs() {
        return advice.segments().stream().map(segment -> segment.ref()).toList();
    }
}
