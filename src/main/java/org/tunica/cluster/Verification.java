package org.tunica.cluster;

import java.util.List;

/**
 * How an index compares with the cases it was loaded from.
 *
 * @param segments of the cases
 * @param missing how many of them the index lacks
 * @param different how many it has otherwise
 * @param extra how many it has that the cases have not
 * @param missingIds the first of those missing
 * @param differentIds the first of those that differ
 */
public record Verification(
        long segments, long missing, long different, long extra, List<String> missingIds, List<String> differentIds) {
    public Verification {
        missingIds = List.copyOf(missingIds);
        differentIds = List.copyOf(differentIds);
    }

    /** Whether nothing is amiss. */
    public boolean holds() {
        return missing + different + extra == 0;
    }
}
