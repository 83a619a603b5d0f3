package org.tunica.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.tunica.Tunica;
import org.tunica.pastcases.CaseFilter;
import org.tunica.pastcases.Coarsening;
import org.tunica.pastcases.EachCase;
import org.tunica.pastcases.Finished;
import org.tunica.pastcases.Release;
import org.tunica.pastcases.WaitingCase;
import org.tunica.treatment.TreatedPlan;

/** Where past cases are kept: a folder of its own, or the data of a server. */
interface PastCaseHouse extends AutoCloseable {
    /** The rules by which they are read. */
    Tunica tunica();

    /** The option that names it, to be told to people. */
    String option();

    /** Lets a finished case wait; its random id. */
    String offer(Finished finished, TreatedPlan planned);

    /** All that wait. */
    List<Waiting> waiting();

    /** Tells less of a case that waits. */
    void coarsen(String id, Set<Coarsening.What> less, Set<String> without);

    /** Releases those whose digests are given back, all or none; how many. */
    int release(Set<String> digests);

    /** What is released. */
    EachCase released();

    /** Brings in all cases of a file; what to say of it. */
    String bringIn(Path file, ProgressBar bar);

    /** Writes released cases, one on a line; how many. */
    long export(CaseFilter filter, Appendable out, ProgressBar bar);

    @Override
    void close();

    /**
     * A case that waits.
     *
     * @param text exactly what is kept and would be released
     * @param digest of these bytes
     */
    record Waiting(WaitingCase read, String text, String digest, Release.Place place) {}
}
