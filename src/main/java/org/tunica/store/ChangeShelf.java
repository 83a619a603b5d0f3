package org.tunica.store;

import java.util.List;

/** Proposed changes of rules, handed in and taken back. Nothing here is ever changed or removed. */
public interface ChangeShelf {
    /** Keeps the next step of a change. */
    KeptChangeStep step(Actor by, NewChangeStep step);

    /** Every step of a change, first to last; none when it was never handed in. */
    List<KeptChangeStep> steps(String number);

    /** The last step of every change, the newest first. */
    List<KeptChangeStep> last();
}
