package org.tunica.archive;

import java.util.List;
import java.util.function.Consumer;
import org.tunica.store.KeptPastCase;
import org.tunica.store.PastCaseShelf;

/** Goes along a shelf in the order of its changes, some rows at a time. */
final class ShelfRows {
    private static final int AT_ONCE = 500;

    private ShelfRows() {}

    /**
     * Hands over every row that last changed between two moments.
     *
     * @param after an audit number; what changed no later is not handed over
     * @param upTo an audit number; what changed later is not, either
     */
    static void each(PastCaseShelf shelf, long after, long upTo, Consumer<KeptPastCase> taker) {
        long last = after;
        List<KeptPastCase> some;
        do {
            some = shelf.since(last, AT_ONCE);
            for (KeptPastCase one : some) {
                last = one.stamp().auditNumber();
                if (last <= upTo) {
                    taker.accept(one);
                }
            }
        } while (some.size() == AT_ONCE && last < upTo);
    }
}
