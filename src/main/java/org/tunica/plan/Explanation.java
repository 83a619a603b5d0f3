package org.tunica.plan;

import java.util.List;
import org.tunica.rules.NearMiss;
import org.tunica.rules.Tried;

/**
 * Why a technique stands as it does for a segment: every rule, whether it spoke or not.
 *
 * @param segment the advice for the segment
 * @param option the technique asked about
 * @param tried every rule with its conditions
 * @param nearMisses every rule that a little difference of one number would turn, whether or not the standing would
 *     change, nearest first
 */
public record Explanation(
        Advice.Release release,
        SegmentAdvice segment,
        OptionAdvice option,
        List<Tried> tried,
        List<NearMiss> nearMisses) {}
