package org.tunica.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tunica.Tunica;
import org.tunica.casefile.Faults;
import org.tunica.pastcases.CaseProgress;
import org.tunica.pastcases.PastCase;
import org.tunica.store.Actor;
import org.tunica.store.KeptPastCase;
import org.tunica.store.PastCaseShelf;
import org.tunica.store.PastCaseState;
import org.tunica.store.Store;

/**
 * Takes past cases of a file into a store. All lines are read first; then the cases are kept some hundreds at a time, so that
 * others can write meanwhile. Where that was broken off, doing it again goes on: a case that is released here with the same
 * words is passed over.
 */
final class BringingIn {
    private static final int AT_ONCE = 500;

    private final Tunica tunica;
    private final Store store;
    private final PastCaseShelf shelf;
    private final Actor by;
    private final List<PastCase> some = new ArrayList<>();
    private long brought;

    BringingIn(Tunica tunica, Store store, Actor by) {
        this.tunica = tunica;
        this.store = store;
        this.shelf = store.pastCases();
        this.by = by;
    }

    /** How many were not here before. */
    long all(Path file, CaseProgress progress) {
        Faults faults = new Faults();
        tunica.pastCases().readCases(file, one -> look(one, faults), CaseProgress.NONE);
        faults.throwIfAny(file.toString());
        tunica.pastCases().readCases(file, this::take, progress);
        keep();
        return brought;
    }

    private void look(PastCase one, Faults faults) {
        shelf.one(one.id())
                .filter(there -> !same(there, one))
                .ifPresent(there -> faults.add(
                        "$.id: \"" + one.id() + "\"",
                        "is here already with other words, or was: "
                                + there.state().word()));
    }

    private boolean same(KeptPastCase there, PastCase one) {
        return there.state() == PastCaseState.RELEASED
                && there.line().equals(tunica.pastCases().toLine(one));
    }

    private void take(PastCase one) {
        some.add(one);
        if (some.size() == AT_ONCE) {
            keep();
        }
    }

    private void keep() {
        brought += store.together(() -> {
            long kept = 0;
            for (PastCase one : some) {
                if (shelf.one(one.id()).isEmpty()) {
                    shelf.bringIn(by, one.id(), tunica.pastCases().toLine(one));
                    kept++;
                }
            }
            return kept;
        });
        some.clear();
    }
}
