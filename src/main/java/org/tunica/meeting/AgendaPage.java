package org.tunica.meeting;

import java.util.List;
import org.tunica.frame.Frame;

/** What a meeting goes through, in the order in which it was sent; no name of a case stands here. */
public record AgendaPage(Frame frame, String date, List<Item> items) {
    /**
     * One case.
     *
     * @param what its segments
     * @param decided what was decided; empty while nothing was
     */
    public record Item(String meetingId, List<String> what, List<String> reasons, List<String> decided) {}

    public AgendaPage {
        items = List.copyOf(items);
    }
}
