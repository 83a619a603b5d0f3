package org.tunica.store;

import java.util.List;

/** Feedback on cards. */
public interface FeedbackBook {
    /**
     * Keeps a report once; the same card, outcome and time again is the same report.
     *
     * @return whether it was new
     */
    boolean keep(Actor by, HookFeedback feedback);

    /** Reports, the last one first. */
    List<Kept> newest(Page page);

    /** A report and how it came. */
    record Kept(HookFeedback feedback, Stamp stamp) {}
}
