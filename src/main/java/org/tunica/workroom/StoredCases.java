package org.tunica.workroom;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import org.tunica.pastcases.CaseLine;
import org.tunica.pastcases.CaseProgress;
import org.tunica.replay.PastLines;
import org.tunica.store.KeptPastCase;
import org.tunica.store.PastCaseShelf;
import org.tunica.store.PastCaseState;

/** The past cases released at a store, in the order in which they were released; a line's number is its place among them. */
public final class StoredCases implements PastLines {
    private static final int AT_ONCE = 500;

    private final PastCaseShelf shelf;
    private final long upTo;

    /** @param upTo an audit number: what came or went later is not seen */
    public StoredCases(PastCaseShelf shelf, long upTo) {
        this.shelf = shelf;
        this.upTo = upTo;
    }

    @Override
    public long eachLine(Consumer<CaseLine> taker, CaseProgress progress) {
        long number = 0;
        long last = 0;
        List<KeptPastCase> some;
        do {
            some = shelf.since(last, AT_ONCE);
            for (KeptPastCase one : some) {
                last = one.stamp().auditNumber();
                if (one.state() == PastCaseState.RELEASED && last <= upTo) {
                    number++;
                    taker.accept(new CaseLine(number, one.line().getBytes(StandardCharsets.UTF_8), true));
                    progress.at(last, upTo, number);
                }
            }
        } while (some.size() == AT_ONCE && last < upTo);
        return number;
    }
}
