package org.tunica.office;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * What waits for somebody to look: reviews and numbers nobody checked.
 *
 * @param release whose rules they are
 * @param overdue reviews whose day has passed
 * @param soon reviews that are near
 * @param unverified numbers in use that nobody checked against a source
 */
public record DuePage(Frame frame, String release, List<Line> overdue, List<Line> soon, List<Unchecked> unverified) {
    /** A review. */
    public record Line(String id, boolean rule, String title, String lastDay) {}

    /** A number. */
    public record Unchecked(String id, String value, String says, String source, List<String> rules) {}
}
