package org.tunica.fhir;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.Faults;

/** What is noted while a record is read: what could not be used, and what makes the whole unusable. */
final class Notes {
    private final Faults faults = new Faults();
    private final List<Unused> unused = new ArrayList<>();

    Faults faults() {
        return faults;
    }

    List<Unused> unused() {
        return List.copyOf(unused);
    }

    /** Notes one thing not used; a record with very many of them is refused like one with very many faults. */
    void add(Unused one) {
        unused.add(one);
        if (unused.size() > Faults.MOST) {
            faults.add(
                    one.path(),
                    "more than " + Faults.MOST + " things of the record cannot be used; the reading ended here");
            endWithAll("record");
        }
    }

    /**
     * Ends the reading when anything was wrong; who mends it sees at once what would not have been used, too.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault
     */
    void throwIfFaulty(String what) {
        if (!faults.none()) {
            endWithAll(what);
        }
    }

    private void endWithAll(String what) {
        unused.stream()
                .limit((long) Faults.MOST - Math.min(Faults.MOST, faults.count()))
                .forEach(one -> faults.add(one.path(), one.resource() + " would not be used: " + one.reason()));
        faults.throwIfAny(what);
    }
}
