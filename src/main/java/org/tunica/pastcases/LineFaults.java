package org.tunica.pastcases;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** The faults of a file of lines, each with the number of its line; nobody mends more than so many at once. */
final class LineFaults {
    /** The most faults listed of one file. */
    static final int MOST = 200;

    private final List<Fault> found = new ArrayList<>();

    void add(long line, String says) {
        add(new Fault("line " + line, says));
    }

    /** The faults of a line, each with its number already. */
    void add(FaultyInput ofLine) {
        ofLine.faults().forEach(this::add);
    }

    private void add(Fault fault) {
        if (found.size() < MOST) {
            found.add(fault);
            if (full()) {
                found.add(
                        new Fault("further on", "there may be more than " + MOST + " faults; the reading ended here"));
            }
        }
    }

    boolean none() {
        return found.isEmpty();
    }

    /** Whether reading on would tell nothing more. */
    boolean full() {
        return found.size() >= MOST;
    }

    void throwIfAny(String what) {
        if (!found.isEmpty()) {
            throw new FaultyInput(what, found);
        }
    }
}
