package org.tunica.couch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.archive.ReleasedCases;
import org.tunica.cluster.Cluster;
import org.tunica.pastcases.PastCase;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.LeftOut;
import org.tunica.store.Page;
import org.tunica.store.PastCaseState;
import org.tunica.store.Store;

/**
 * The past cases a case can be compared with: those released here. Before any is, an invented case may be held against
 * invented ones; a real case never is.
 */
public final class PastLibrary implements AutoCloseable {
    private final Tunica tunica;
    private final Store store;
    private final Optional<Cluster> shared;
    private Optional<CaseLibrary> released = Optional.empty();
    private Optional<CaseLibrary> invented = Optional.empty();
    private Optional<CaseLibrary> far = Optional.empty();
    private long builtAt = -1;

    /** @param shared the search engine whose index is asked instead of one made here */
    PastLibrary(Tunica tunica, Store store, Optional<Cluster> shared) {
        this.tunica = tunica;
        this.store = store;
        this.shared = shared;
    }

    /**
     * The library for a case; none when there is nothing to compare it with.
     *
     * @param madeUp whether nobody was ever like the case
     */
    public synchronized Optional<CaseLibrary> forCase(boolean madeUp) {
        renew();
        if (released.isPresent() || !madeUp) {
            return released;
        }
        if (invented.isEmpty()) {
            invented = Optional.of(tunica.likeness().inventedCases());
        }
        return invented;
    }

    /** Builds the index anew when past cases came or went; the one before is left to whoever still reads it. */
    private void renew() {
        long last = lastChange();
        if (last == builtAt) {
            return;
        }
        if (shared.isPresent()) {
            ask(shared.get(), last);
            return;
        }
        ReleasedCases source = new ReleasedCases(tunica, store.pastCases(), 0, last);
        List<PastCase> cases = new ArrayList<>();
        source.each((where, pastCase) -> cases.add(pastCase));
        released = cases.isEmpty()
                ? Optional.empty()
                : Optional.of(tunica.likeness()
                        .released(LeftOut.told(cases.size() + " past cases released here.", source.leftOut()), cases));
        builtAt = last;
    }

    /** Asks the shared index, which changes by itself; it is looked at again until it is up to the last change. */
    private void ask(Cluster index, long last) {
        Optional<String> there = index.digest();
        if (there.isPresent() && far.isEmpty()) {
            far = Optional.of(index.open());
        }
        released = far.filter(library -> library.size() > 0);
        if (there.equals(Optional.of(ReleasedCases.digest(last)))) {
            builtAt = last;
        }
    }

    /** The number of the last change of what is released, in the audit trail; nought before there was one. */
    public long lastChange() {
        long last = 0;
        for (PastCaseState state : List.of(PastCaseState.RELEASED, PastCaseState.WITHDRAWN)) {
            last = Math.max(
                    last,
                    store.pastCases().in(state, Page.newest(1)).stream()
                            .mapToLong(one -> one.stamp().auditNumber())
                            .max()
                            .orElse(0));
        }
        return last;
    }

    @Override
    public synchronized void close() {
        released.or(() -> far).ifPresent(CaseLibrary::close);
        invented.ifPresent(CaseLibrary::close);
    }
}
