package org.tunica.meeting;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * The form on which a decision is entered.
 *
 * @param meetingId of the packet
 * @param agreed names or initials as typed
 * @param faults what is to be mended
 */
public record DecisionPage(
        Frame frame,
        String meetingId,
        String date,
        List<SegmentField> segments,
        String agreed,
        List<DissentRow> dissent,
        String owner,
        String due,
        List<String> faults) {
    /**
     * What is asked for one segment.
     *
     * @param ref its name in the packet
     * @param first what the advice has first
     */
    public record SegmentField(
            String ref, String title, String first, List<Choice> choices, List<Choice> whys, String reason) {}

    /** One who does not agree. */
    public record DissentRow(int number, String who, String says) {}

    public DecisionPage {
        segments = List.copyOf(segments);
        dissent = List.copyOf(dissent);
        faults = List.copyOf(faults);
    }
}
