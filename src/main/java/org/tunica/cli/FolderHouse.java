package org.tunica.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tunica.Tunica;
import org.tunica.archive.RandomIds;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.CaseBase;
import org.tunica.pastcases.CaseFilter;
import org.tunica.pastcases.CaseProgress;
import org.tunica.pastcases.Coarsening;
import org.tunica.pastcases.EachCase;
import org.tunica.pastcases.Finished;
import org.tunica.pastcases.PastCase;
import org.tunica.pastcases.Release;
import org.tunica.pastcases.WaitingCase;
import org.tunica.pastcases.WaitingRoom;
import org.tunica.treatment.TreatedPlan;

/** Past cases in a folder, read by the program's own rules. */
final class FolderHouse implements PastCaseHouse {
    private final Tunica tunica = Tunica.shipped();
    private final String name;
    private final CaseBase base;
    private final WaitingRoom room;

    FolderHouse(String name) {
        this.name = name;
        this.base = tunica.pastCases().caseBase(CasesFolder.path(name));
        this.room = new WaitingRoom(CasesFolder.path(name).toAbsolutePath());
    }

    @Override
    public Tunica tunica() {
        return tunica;
    }

    @Override
    public String option() {
        return "--cases " + name;
    }

    @Override
    public String offer(Finished finished, TreatedPlan planned) {
        WaitingCase waiting = tunica.pastCases().anonymise(finished, planned, new RandomIds());
        room.add(tunica.pastCases().toLine(waiting));
        return waiting.id();
    }

    @Override
    public List<Waiting> waiting() {
        List<WaitingRoom.Line> lines = room.lines();
        List<WaitingCase> read = read(lines);
        List<Release.Place> places = tunica.pastCases().release(released()).places(read);
        List<Waiting> waiting = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            waiting.add(
                    new Waiting(read.get(i), lines.get(i).text(), lines.get(i).digest(), places.get(i)));
        }
        return waiting;
    }

    private List<WaitingCase> read(List<WaitingRoom.Line> lines) {
        List<WaitingCase> waiting = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            waiting.add(tunica.pastCases()
                    .readWaitingCase(
                            WaitingRoom.FILE + ", line " + (i + 1),
                            lines.get(i).text().getBytes(StandardCharsets.UTF_8)));
        }
        return waiting;
    }

    @Override
    public void coarsen(String id, Set<Coarsening.What> less, Set<String> without) {
        List<WaitingRoom.Line> lines = room.lines();
        List<WaitingCase> waiting = read(lines);
        for (int i = 0; i < lines.size(); i++) {
            if (waiting.get(i).id().equals(id)) {
                WaitingCase coarser = tunica.pastCases().coarser(waiting.get(i), less, without);
                room.replace(lines.get(i), tunica.pastCases().toLine(coarser));
                return;
            }
        }
        throw new FaultyInput("cases", List.of(new Fault("ID", "no case of that name waits here")));
    }

    @Override
    public int release(Set<String> digests) {
        List<WaitingRoom.Line> seen = room.lines().stream()
                .filter(line -> digests.contains(line.digest()))
                .toList();
        everyDigestIsOfALine(digests, seen);
        List<PastCase> released = tunica.pastCases().release(released()).of(read(seen));
        base.add(released);
        room.remove(digests);
        return released.size();
    }

    private static void everyDigestIsOfALine(Set<String> asked, List<WaitingRoom.Line> seen) {
        Faults faults = new Faults();
        Set<String> known = new LinkedHashSet<>();
        seen.forEach(line -> known.add(line.digest()));
        asked.stream()
                .filter(digest -> !known.contains(digest))
                .forEach(digest -> faults.add(
                        "--digest", "no waiting line has one of those given; look again, it may have changed since"));
        faults.throwIfAny("release");
    }

    /** Nothing where there is no base yet. */
    @Override
    public EachCase released() {
        return Files.exists(CasesFolder.path(name).resolve(CaseBase.CASES))
                ? taker -> base.each(taker, CaseProgress.NONE)
                : EachCase.NONE;
    }

    @Override
    public String bringIn(Path file, ProgressBar bar) {
        return CasesText.imported(base.importFrom(file, bar), file.toString(), name);
    }

    @Override
    public long export(CaseFilter filter, Appendable out, ProgressBar bar) {
        return base.export(filter, out, bar);
    }

    /** A folder is not held open. */
    @Override
    public void close() {}
}
