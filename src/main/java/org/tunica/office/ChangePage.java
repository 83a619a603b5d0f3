package org.tunica.office;

import java.util.List;
import java.util.Optional;
import org.tunica.frame.Frame;

/**
 * One change.
 *
 * @param number of its record
 * @param facts how it began and where it stands, name and value
 * @param mine whether the reader is its author
 * @param draft the working copy at this server, if there is one
 * @param handedIn where it stands, if it was handed in
 * @param told what is shown of it: as it was checked now, or as it was handed in
 * @param replay of its rules
 * @param build what a release of it would be called, as typed or proposed; absent when none can be built
 * @param faults why the last step was not done
 */
public record ChangePage(
        Frame frame,
        String number,
        List<ReleasePage.Fact> facts,
        boolean mine,
        Optional<DraftView> draft,
        Optional<String> handedIn,
        Optional<Told> told,
        ReplayState replay,
        Optional<Build> build,
        List<String> faults) {

    /**
     * A working copy.
     *
     * @param folder where the command line finds it, in the folder of the data
     * @param reason in its record, as typed
     * @param loads what does not load, with file and line
     * @param changed files that differ from what it began with
     * @param rules ids to choose from; none while it does not load
     * @param numbers ids to choose from
     * @param files every file
     */
    public record DraftView(
            String folder,
            String reason,
            List<FileFault> loads,
            List<String> changed,
            List<String> rules,
            List<String> numbers,
            List<String> files) {}

    /** A fault, and the file and line to mend; no file when it is about none. */
    public record FileFault(String says, String path, int line) {}

    /**
     * A change with its checks.
     *
     * @param heading of what it is
     * @param verdict in a sentence
     * @param checks what was looked at
     * @param differences in English
     * @param lines the same line by line
     */
    public record Told(
            String heading,
            String verdict,
            List<CheckLine> checks,
            List<String> differences,
            List<Line> lines,
            String digest) {}

    /** One check. */
    public record CheckLine(String result, String says, List<String> findings) {}

    /** A line of the text difference: its kind as a style, and the line. */
    public record Line(String style, String text) {}

    /**
     * Where the replay of the change stands.
     *
     * @param running how far it is, in words; empty when it does not run
     * @param casesDone so far
     * @param casesAll that there are
     * @param finished whether one of exactly these rules is kept
     * @param failed why the last one came to no result
     * @param possible whether one can be begun
     */
    public record ReplayState(
            String running, long casesDone, long casesAll, boolean finished, List<String> failed, boolean possible) {}

    /** What is asked for a release. */
    public record Build(String version, String title, String effectiveFrom, String effectiveTo, String reviewBy) {}
}
