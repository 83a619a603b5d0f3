package org.tunica.replay;

import java.util.List;

/**
 * What differs between two advices of one case.
 *
 * @param segmentsCount segments compared
 * @param changed those that do not come out the same, in the order of the case
 */
public record Comparison(String caseRef, int segmentsCount, List<ChangedSegment> changed) {
    public Comparison {
        changed = List.copyOf(changed);
    }

    /** Whether the two come to the same in everything that is compared. */
    public boolean same() {
        return changed.isEmpty();
    }
}
