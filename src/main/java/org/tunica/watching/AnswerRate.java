package org.tunica.watching;

import java.util.List;
import org.tunica.statistics.WilsonInterval;

/**
 * How often what a rule or a technique brought up was set aside.
 *
 * @param id of the rule or the technique
 * @param says it in words
 * @param overridden of the cards that were answered
 * @param reasons given, the most frequent first
 * @param appropriate of those set aside, how many somebody found right who looked later
 * @param looked of how many of those set aside somebody came to a finding
 */
public record AnswerRate(
        String id, String says, WilsonInterval overridden, List<ReasonCount> reasons, int appropriate, int looked) {
    public AnswerRate {
        reasons = List.copyOf(reasons);
    }

    /** A reason and how often it was given. */
    public record ReasonCount(String reason, int count) {}
}
