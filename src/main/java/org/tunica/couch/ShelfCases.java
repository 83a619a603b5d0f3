package org.tunica.couch;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.PastCase;
import org.tunica.similar.CaseSource;
import org.tunica.store.KeptPastCase;
import org.tunica.store.Page;
import org.tunica.store.PastCaseShelf;
import org.tunica.store.PastCaseState;

/** The released past cases of a store, to be searched. One that the rules in force cannot read is counted and left out. */
final class ShelfCases implements CaseSource {
    private final List<PastCase> cases = new ArrayList<>();
    private final long upTo;
    private int unreadable;

    /** @param upTo number of the last change of past cases in the audit trail */
    ShelfCases(Tunica tunica, PastCaseShelf shelf, long upTo) {
        this.upTo = upTo;
        Page page = Page.newest(Page.LONGEST);
        List<KeptPastCase> kept;
        do {
            kept = shelf.in(PastCaseState.RELEASED, page);
            kept.forEach(one -> add(tunica, one));
            page = kept.isEmpty() ? page : page.after(kept.get(kept.size() - 1).stamp());
        } while (kept.size() == Page.LONGEST);
    }

    private void add(Tunica tunica, KeptPastCase kept) {
        try {
            cases.add(tunica.pastCases()
                    .readPastCase("past case " + kept.id(), kept.line().getBytes(StandardCharsets.UTF_8)));
        } catch (FaultyInput e) {
            unreadable++;
        }
    }

    int count() {
        return cases.size();
    }

    @Override
    public boolean invented() {
        return false;
    }

    @Override
    public String says() {
        return "Past cases released here: " + cases.size() + "."
                + (unreadable == 0 ? "" : " " + unreadable + " more cannot be read under the rules in force.");
    }

    @Override
    public String digest() {
        return "released up to " + upTo;
    }

    @Override
    public void each(Taker taker) {
        for (int i = 0; i < cases.size(); i++) {
            taker.take(i, cases.get(i));
        }
    }

    @Override
    public PastCase at(long where) {
        return cases.get(Math.toIntExact(where));
    }
}
