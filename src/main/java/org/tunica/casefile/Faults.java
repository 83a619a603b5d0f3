package org.tunica.casefile;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Gathers every fault of one input, each once, so that a reader can mend them all at once.
 *
 * <p>An input with more than {@link #MOST} faults is not worth reading on: nobody mends so many, and a hostile file could
 * keep the program busy and full of messages.
 */
public final class Faults {
    /** The most faults listed of one input. */
    public static final int MOST = 1_000;

    private final Set<Fault> found = new LinkedHashSet<>();

    /**
     * Notes one fault at a place.
     *
     * @throws FaultyInput at once, when there are more than {@link #MOST}
     */
    public void add(String place, String says) {
        if (found.add(new Fault(place, says)) && found.size() > MOST) {
            throw new FaultyInput("input", firstOf(place));
        }
    }

    private List<Fault> firstOf(String place) {
        List<Fault> listed = new ArrayList<>(List.copyOf(found).subList(0, MOST));
        listed.add(new Fault(place, "there are more than " + MOST + " faults; the reading ended here"));
        return listed;
    }

    /** How many faults were noted so far. */
    public int count() {
        return found.size();
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
