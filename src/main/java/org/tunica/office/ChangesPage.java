package org.tunica.office;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * Every change: those being worked on, and those that were handed in.
 *
 * @param began what a new one would begin with, in words
 * @param mayStart whether the reader may start one
 * @param noFolder whether this server has no folder for working copies, so that changes are made at the command line
 * @param drafts working copies at this server
 * @param handedIn changes that were handed in
 * @param faults why one was not started
 * @param title as typed
 * @param initials as typed
 */
public record ChangesPage(
        Frame frame,
        String began,
        boolean mayStart,
        boolean noFolder,
        List<DraftRow> drafts,
        List<Row> handedIn,
        List<String> faults,
        String title,
        String initials) {

    /** A working copy, or why it cannot be used. */
    public record DraftRow(String number, String title, String author, String begun, List<String> faults) {}

    /** A change that was handed in. */
    public record Row(String number, String state, String author, String at, long times, String release) {}
}
