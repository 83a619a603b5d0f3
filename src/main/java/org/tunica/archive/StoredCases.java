package org.tunica.archive;

import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import org.tunica.pastcases.CaseLine;
import org.tunica.pastcases.CaseProgress;
import org.tunica.replay.PastLines;
import org.tunica.store.PastCaseShelf;
import org.tunica.store.PastCaseState;

/** The past cases released at a store, in the order in which they were released; a line's number is its place among them. */
public final class StoredCases implements PastLines {
    private final PastCaseShelf shelf;
    private final long upTo;

    /** @param upTo an audit number: what came or went later is not seen */
    public StoredCases(PastCaseShelf shelf, long upTo) {
        this.shelf = shelf;
        this.upTo = upTo;
    }

    @Override
    public long eachLine(Consumer<CaseLine> taker, CaseProgress progress) {
        long[] number = {0};
        ShelfRows.each(shelf, 0, upTo, one -> {
            if (one.state() == PastCaseState.RELEASED) {
                number[0]++;
                taker.accept(new CaseLine(number[0], one.line().getBytes(StandardCharsets.UTF_8), true));
                progress.at(one.stamp().auditNumber(), upTo, number[0]);
            }
        });
        return number[0];
    }
}
