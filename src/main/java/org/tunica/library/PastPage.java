package org.tunica.library;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * Past cases that wait.
 *
 * @param waiting in the order of their random ids
 * @param unreadable ids of those that the rules in force cannot read
 * @param together where all of them are shown at once
 */
public record PastPage(Frame frame, List<Line> waiting, List<String> unreadable, String together) {
    public PastPage {
        waiting = List.copyOf(waiting);
        unreadable = List.copyOf(unreadable);
    }

    /**
     * One that waits.
     *
     * @param crowd what it would stand in, in words
     */
    public record Line(String id, String crowd) {}
}
