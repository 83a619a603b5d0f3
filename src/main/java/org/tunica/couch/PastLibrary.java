package org.tunica.couch;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tunica.Tunica;
import org.tunica.similar.CaseLibrary;
import org.tunica.store.KeptPastCase;
import org.tunica.store.Page;
import org.tunica.store.Store;

/**
 * Past segments to search: the released past cases of the store, indexed anew once any of them changed; and, for cases that are
 * made up themselves, the library that is made up. The two are never mixed.
 */
public final class PastLibrary implements AutoCloseable {
    private final Tunica tunica;
    private final Store store;
    private long upTo;
    private @Nullable CaseLibrary released;
    private @Nullable CaseLibrary invented;

    PastLibrary(Tunica tunica, Store store) {
        this.tunica = tunica;
        this.store = store;
    }

    /** Searches the released past cases; empty while none is released. One search at a time, so that none is closed under it. */
    public synchronized <T> Optional<T> inReleased(Function<CaseLibrary, T> search) {
        keepUp();
        return Optional.ofNullable(released).map(search);
    }

    /** Searches the library that is made up. */
    public synchronized <T> T inInvented(Function<CaseLibrary, T> search) {
        CaseLibrary library = invented == null ? tunica.likeness().inventedCases() : invented;
        invented = library;
        return search.apply(library);
    }

    private void keepUp() {
        long last = last();
        if (last == upTo) {
            return;
        }
        ShelfCases cases = new ShelfCases(tunica, store.pastCases(), last);
        CaseLibrary before = released;
        released = cases.count() == 0 ? null : tunica.likeness().cases(cases);
        upTo = last;
        if (before != null) {
            before.close();
        }
    }

    /** The number of the last change of any past case. */
    private long last() {
        long last = upTo;
        List<KeptPastCase> changed;
        do {
            changed = store.pastCases().since(last, Page.LONGEST);
            last = changed.isEmpty()
                    ? last
                    : changed.get(changed.size() - 1).stamp().auditNumber();
        } while (changed.size() == Page.LONGEST);
        return last;
    }

    @Override
    public synchronized void close() {
        if (released != null) {
            released.close();
        }
        if (invented != null) {
            invented.close();
        }
    }
}
