package org.tunica.couch;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.pastcases.PastCase;
import org.tunica.similar.CaseLibrary;
import org.tunica.store.KeptPastCase;
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
    private Optional<CaseLibrary> released = Optional.empty();
    private Optional<CaseLibrary> invented = Optional.empty();
    private long builtAt = -1;

    PastLibrary(Tunica tunica, Store store) {
        this.tunica = tunica;
        this.store = store;
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
        List<PastCase> cases = new ArrayList<>();
        Page page = Page.newest(Page.LONGEST);
        List<KeptPastCase> kept;
        do {
            kept = store.pastCases().in(PastCaseState.RELEASED, page);
            kept.forEach(one -> cases.add(
                    tunica.pastCases().readPastCase("past case", one.line().getBytes(StandardCharsets.UTF_8))));
            page = kept.isEmpty() ? page : page.after(kept.get(kept.size() - 1).stamp());
        } while (kept.size() == Page.LONGEST);
        released = cases.isEmpty()
                ? Optional.empty()
                : Optional.of(tunica.likeness().released(cases.size() + " past cases released here.", cases));
        builtAt = last;
    }

    private long lastChange() {
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
        released.ifPresent(CaseLibrary::close);
        invented.ifPresent(CaseLibrary::close);
    }
}
