package org.tunica.meeting;

import java.util.List;
import org.tunica.frame.Frame;
import org.tunica.paper.Document;

/**
 * The packet of a case on a page.
 *
 * @param document the same that the PDF is made of
 * @param changed whether the case was saved anew since it was sent
 * @param date of the meeting it is on; empty while none is set
 * @param decided what was decided; empty while nothing was
 */
public record PacketPage(
        Frame frame, String meetingId, Document document, boolean changed, String date, List<String> decided) {
    public PacketPage {
        decided = List.copyOf(decided);
    }
}
