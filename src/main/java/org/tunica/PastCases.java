package org.tunica;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.invented.InventedLibrary;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.Anonymiser;
import org.tunica.pastcases.AnonymityReport;
import org.tunica.pastcases.CaseBase;
import org.tunica.pastcases.CaseCount;
import org.tunica.pastcases.CaseProgress;
import org.tunica.pastcases.Coarsening;
import org.tunica.pastcases.EachCase;
import org.tunica.pastcases.Finished;
import org.tunica.pastcases.Nameless;
import org.tunica.pastcases.NamelessCase;
import org.tunica.pastcases.NoteScrubber;
import org.tunica.pastcases.PastCase;
import org.tunica.pastcases.PastCaseReader;
import org.tunica.pastcases.Release;
import org.tunica.pastcases.WaitingCase;
import org.tunica.treatment.TreatedPlan;

/** Everything a user can ask about finished cases without the person. Immutable. */
public final class PastCases {
    private final Knowledge knowledge;
    private final Treatments treatments;

    /** Made when it is first needed: it knows all words of notes, which an advice needs none of. */
    private final AtomicReference<PastCaseReader> reader = new AtomicReference<>();

    PastCases(Knowledge knowledge, Treatments treatments) {
        this.knowledge = knowledge;
        this.treatments = treatments;
    }

    private PastCaseReader reader() {
        return reader.updateAndGet(known -> known == null ? new PastCaseReader(knowledge) : known);
    }

    /**
     * Reads a past case, {@code tunica-past/1}.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public PastCase readPastCase(String what, byte[] json) {
        return reader().read(what, json);
    }

    /**
     * Takes the person out of a finished case; a human has to release what comes out.
     *
     * @param planned what was planned, of which the case and the records are
     * @param ids random ids as {@link PastCase#ID} wants them
     * @throws org.tunica.casefile.FaultyInput with every reason why it cannot become a past case
     */
    public WaitingCase anonymise(Finished finished, TreatedPlan planned, Supplier<String> ids) {
        try {
            treatments.treatment(planned, finished.delivered(), finished.followUp());
        } catch (FaultyInput e) {
            // its message may hold names of the clinic
            throw new FaultyInput(
                    "retain",
                    List.of(new Fault(
                            "plan, deliveries and follow-up",
                            "do not belong together; tunica followup with the same files tells where")));
        }
        WaitingCase waiting = new Anonymiser(knowledge, ids).anonymise(finished);
        return readWaitingCase("the case made anonymous", toLine(waiting).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Reads a case that waits for its release, {@code tunica-waiting/1}.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public WaitingCase readWaitingCase(String what, byte[] json) {
        return reader().readWaiting(what, json);
    }

    /** A waiting case as JSON on one line, {@code tunica-waiting/1}. */
    public String toLine(WaitingCase waiting) {
        return JsonOutput.line(waiting);
    }

    /**
     * An open case without the person, to be talked about.
     *
     * @param id stands in place of its reference; nothing of the case may be in it
     */
    public NamelessCase nameless(CaseFile caseFile, String id) {
        return new Nameless(knowledge).of(caseFile, id);
    }

    /** A text reduced to clinical words and measurements; empty when nothing of it stays. */
    public String scrubbed(String text) {
        return String.join(" ", new NoteScrubber(knowledge).scrub(List.of(text)));
    }

    /** The same waiting case with less told. */
    public WaitingCase coarser(WaitingCase waiting, Set<Coarsening.What> less, Set<String> without) {
        return new Coarsening(knowledge).of(waiting, less, without);
    }

    /** The past cases in a folder, which need not be there yet. */
    public CaseBase caseBase(Path folder) {
        return new CaseBase(folder, knowledge, this::toLine);
    }

    /** A release of waiting cases into a base. */
    public Release release(EachCase released) {
        return new Release(knowledge, released);
    }

    /** How well nobody can be found in a base of past cases. */
    public AnonymityReport anonymityReport(EachCase released) {
        return AnonymityReport.of(knowledge, released);
    }

    /**
     * Reads every line of a file of past cases and counts.
     *
     * @param taker is handed each sound case, also where a later line is faulty
     * @throws org.tunica.casefile.FaultyInput with each faulty line and its number
     */
    public CaseCount readCases(Path file, Consumer<PastCase> taker, CaseProgress progress) {
        return CaseBase.readFile(file, reader(), taker, progress);
    }

    /** Finished cases that nobody ever was, the same for the same seed. */
    public InventedLibrary inventedLibrary(long seed) {
        return new InventedLibrary(knowledge, seed);
    }

    /** A past case as JSON on one line, {@code tunica-past/1}, as it stands in a case base. */
    public String toLine(PastCase pastCase) {
        return JsonOutput.line(pastCase);
    }
}
