package org.tunica.similar;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.outcomes.WhatHappened;
import org.tunica.plan.SimilarAdvice;

/**
 * Past segments like those of a case, {@code tunica-similar/1}.
 *
 * @param caseRef the name of the case; absent when only words were searched
 * @param base what was searched, in words
 * @param invented whether any of it is made up
 * @param pastSegments how many segments it holds
 * @param filter which of them were looked at
 * @param segments for each segment asked about
 * @param byWords those whose notes fit the words best, when no case was given
 */
public record SimilarCases(
        String format,
        Optional<String> caseRef,
        String caution,
        String base,
        boolean invented,
        int pastSegments,
        SimilarFilter filter,
        List<ForSegment> segments,
        Optional<SimilarAdvice> byWords) {

    /** The word it carries under {@code format}. */
    public static final String FORMAT = "tunica-similar/1";

    public SimilarCases {
        segments = List.copyOf(segments);
    }

    /**
     * Past segments like one of the case.
     *
     * @param whatHappened to more of the nearest than are listed; absent where they were chosen by how it went
     */
    public record ForSegment(
            String ref,
            Limb.Side side,
            Segment.Vein vein,
            Segment.Level level,
            SimilarAdvice similar,
            Optional<WhatHappened> whatHappened) {}
}
