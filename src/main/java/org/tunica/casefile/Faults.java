package org.tunica.casefile;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers every fault of one input, each once, so that a reader can mend them all at once. */
public final class Faults {
    private final Set<Fault> found = new LinkedHashSet<>();

    /** Notes one fault at a place. */
    public void add(String place, String says) {
        found.add(new Fault(place, says));
    }

    /** Whether nothing was wrong so far. */
    public boolean none() {
        return found.isEmpty();
    }

    /** The faults in the order they were found. */
    public List<Fault> list() {
        return List.copyOf(found);
    }

    /**
     * Ends the reading when anything was wrong.
     *
     * @param what the input, for the first line of the message
     * @throws FaultyInput with every fault
     */
    public void throwIfAny(String what) {
        if (!found.isEmpty()) {
            throw new FaultyInput(what, list());
        }
    }
}
