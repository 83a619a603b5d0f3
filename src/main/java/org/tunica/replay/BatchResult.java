package org.tunica.replay;

import java.util.List;

/**
 * What became of one batch.
 *
 * @param batch its number
 * @param cases digest of what its cases were read from
 * @param casesCount cases that both releases can read
 * @param checkedCount how many of them the rule engine judged again
 * @param changed segments that come out otherwise, in the order of the cases
 * @param unreadable cases the later release cannot read
 */
record BatchResult(
        int batch,
        String cases,
        int casesCount,
        int segmentsCount,
        int checkedCount,
        List<ReplayedSegment> changed,
        List<Unreadable> unreadable) {
    BatchResult {
        changed = List.copyOf(changed);
        unreadable = List.copyOf(unreadable);
    }
}
