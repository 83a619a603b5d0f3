package org.tunica.replay;

import java.util.List;

/**
 * A case the release before can read and the later one refuses.
 *
 * @param caseRef of the case
 * @param faults every fault with its place
 */
public record Unreadable(String caseRef, List<String> faults) {
    public Unreadable {
        faults = List.copyOf(faults);
    }
}
