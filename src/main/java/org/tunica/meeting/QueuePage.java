package org.tunica.meeting;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * What waits for the meeting.
 *
 * @param dates on which cases are set, with how many
 * @param waiting cases that were sent and wait
 * @param found cases nobody sent in which the rules find signs
 * @param stillLooking how many of the cases saved last are still to be looked at
 * @param decided cases decided lately
 */
public record QueuePage(
        Frame frame,
        List<DateLine> dates,
        List<WaitingLine> waiting,
        List<FoundLine> found,
        int stillLooking,
        List<WaitingLine> decided) {
    /** A day and how many cases are set for it. */
    public record DateLine(String date, int cases) {}

    /**
     * A case that was sent.
     *
     * @param date of its meeting; empty while none is set
     * @param decided when and by whom it was decided; empty while it waits
     */
    public record WaitingLine(
            String meetingId, String caseRef, List<String> reasons, String date, String sent, String decided) {}

    /** A case in which the rules find signs. */
    public record FoundLine(String caseRef, boolean invented, List<String> signs) {}
}
