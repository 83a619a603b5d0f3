package org.tunica.archive;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.PastCase;
import org.tunica.similar.CaseSource;
import org.tunica.store.KeptPastCase;
import org.tunica.store.PastCaseShelf;
import org.tunica.store.PastCaseState;

/** The past cases released at a store between two of its changes, as something to load; those that went, by their ids. */
public final class ReleasedCases implements CaseSource {
    private static final String DIGEST = "released up to change ";

    private final Tunica tunica;
    private final PastCaseShelf shelf;
    private final long after;
    private final long upTo;
    private final List<String> goneIds = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    /**
     * @param after an audit number; what came before is not handed over
     * @param upTo an audit number; what comes later is not, either
     */
    public ReleasedCases(Tunica tunica, PastCaseShelf shelf, long after, long upTo) {
        this.tunica = tunica;
        this.shelf = shelf;
        this.after = after;
        this.upTo = upTo;
    }

    /** The change up to which an index of this digest goes, or none that can be followed from. */
    public static long change(String digest) {
        return digest.startsWith(DIGEST) ? Long.parseLong(digest.substring(DIGEST.length())) : 0;
    }

    public static String digest(long upTo) {
        return DIGEST + upTo;
    }

    @Override
    public boolean invented() {
        return false;
    }

    @Override
    public String says() {
        return "Past cases released here.";
    }

    @Override
    public String digest() {
        return digest(upTo);
    }

    /** Hands over what can be read; a case kept under older rules may hold what these do not know. */
    @Override
    public void each(Taker taker) {
        ShelfRows.each(shelf, after, upTo, one -> hand(one, taker));
    }

    private void hand(KeptPastCase one, Taker taker) {
        if (one.state() == PastCaseState.WITHDRAWN) {
            goneIds.add(one.id());
        } else if (one.state() == PastCaseState.RELEASED) {
            PastCase pastCase;
            try {
                pastCase = read(one);
            } catch (FaultyInput e) {
                leftOut.add(one.id());
                return;
            }
            taker.take(one.stamp().auditNumber(), pastCase);
        }
    }

    private PastCase read(KeptPastCase one) {
        return tunica.pastCases()
                .readPastCase("past case " + one.id(), one.line().getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public List<String> leftOut() {
        return leftOut;
    }

    /** Those that went, once all were handed over. */
    public List<String> goneIds() {
        return goneIds;
    }

    /** Not to be had by its place: an index elsewhere keeps the cases themselves. */
    @Override
    public PastCase at(long where) {
        throw new UnsupportedOperationException("a released case is asked for where it is indexed");
    }
}
