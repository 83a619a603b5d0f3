package org.tunica.similar;

import java.util.Optional;

/**
 * What is asked of a library of past segments.
 *
 * @param segment ref of the segment of the case; absent for every segment
 * @param filter which past segments are looked at
 * @param most how many are listed for a segment
 */
public record SimilarRequest(Optional<String> segment, SimilarFilter filter, int most) {
    /** How many are listed unless another number is asked for. */
    public static final int USUAL_MOST = 10;

    public SimilarRequest {
        if (most < 1) {
            throw new IllegalArgumentException("most must be at least 1, got " + most);
        }
    }

    /** The usual number for every segment. */
    public static SimilarRequest usual() {
        return new SimilarRequest(Optional.empty(), SimilarFilter.ALL, USUAL_MOST);
    }
}
