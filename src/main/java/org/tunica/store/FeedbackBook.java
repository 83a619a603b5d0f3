package org.tunica.store;

import java.time.Instant;
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

    /** Reports of one card, the last one first. */
    List<Kept> of(String card);

    /**
     * Keeps what somebody finds who looked at a report later. An earlier word stays; the last one counts.
     *
     * @throws org.tunica.casefile.FaultyInput when there is no such report
     */
    KeptJudgement judge(Actor by, Judgement judgement);

    /** What was found of a report, first to last. */
    List<KeptJudgement> judgements(String card, String outcome, Instant outcomeAt);

    /** What somebody found, and how it came. */
    record KeptJudgement(Judgement judgement, Stamp stamp) {}

    /** A report and how it came. */
    record Kept(HookFeedback feedback, Stamp stamp) {}
}
