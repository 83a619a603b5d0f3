package org.tunica.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tunica.Tunica;
import org.tunica.archive.PastCaseDesk;
import org.tunica.archive.RandomIds;
import org.tunica.archive.Released;
import org.tunica.pastcases.CaseFilter;
import org.tunica.pastcases.Coarsening;
import org.tunica.pastcases.EachCase;
import org.tunica.pastcases.Finished;
import org.tunica.pastcases.PastCase;
import org.tunica.similar.LeftOut;
import org.tunica.store.Actor;
import org.tunica.treatment.TreatedPlan;

/** Past cases among the data of a server, read by the rules in force there. */
final class DataHouse implements PastCaseHouse {
    private final String place;
    private final Actor by;
    private final Consulted consulted;
    private final PastCaseDesk desk;
    private final PrintWriter err;

    DataHouse(String place, String actor, PrintWriter err) {
        this.place = place;
        this.by = new Actor(actor);
        this.consulted = Consulted.at(place, Optional.empty());
        this.desk = consulted.pastCases().orElseThrow();
        this.err = err;
        consulted.tell(err);
    }

    @Override
    public Tunica tunica() {
        return consulted.tunica();
    }

    @Override
    public String option() {
        return "--data " + DataPlace.shown(place);
    }

    @Override
    public String offer(Finished finished, TreatedPlan planned) {
        return desk.offer(by, finished, planned, new RandomIds()).id();
    }

    @Override
    public List<Waiting> waiting() {
        PastCaseDesk.WaitingList all = desk.waiting();
        leftOut(all.cases().size() + " can be shown.", all.unreadable());
        return all.cases().stream()
                .map(one -> new Waiting(one.read(), one.kept().line(), one.digest(), one.place()))
                .toList();
    }

    @Override
    public void coarsen(String id, Set<Coarsening.What> less, Set<String> without) {
        desk.coarsen(by, id, less, without);
    }

    @Override
    public int release(Set<String> digests) {
        return desk.release(by, digests).size();
    }

    @Override
    public EachCase released() {
        return each(desk, err);
    }

    /** What is released at a desk; what cannot be read of it is told once all were handed over. */
    static EachCase each(PastCaseDesk desk, PrintWriter err) {
        return taker -> {
            Released released = desk.released();
            released.to(taker);
            leftOut("Past cases released here.", released.leftOut(), err);
        };
    }

    @Override
    public String bringIn(Path file, ProgressBar bar) {
        return CasesText.broughtIn(desk.bringIn(by, file, bar), file.toString(), place);
    }

    @Override
    public long export(CaseFilter filter, Appendable out, ProgressBar bar) {
        long[] written = {0};
        released().to(one -> {
            if (filter.holds(one)) {
                write(one, out);
                written[0]++;
            }
        });
        return written[0];
    }

    private void write(PastCase one, Appendable out) {
        try {
            out.append(tunica().pastCases().toLine(one)).append('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void leftOut(String says, List<String> ids) {
        leftOut(says, ids, err);
    }

    private static void leftOut(String says, List<String> ids, PrintWriter err) {
        if (!ids.isEmpty()) {
            err.println(LeftOut.told(says, ids));
            err.flush();
        }
    }

    @Override
    public void close() {
        consulted.close();
    }
}
