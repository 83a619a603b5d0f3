package org.tunica.archive;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.CaseProgress;
import org.tunica.pastcases.Coarsening;
import org.tunica.pastcases.Finished;
import org.tunica.pastcases.PastCase;
import org.tunica.pastcases.Release;
import org.tunica.pastcases.WaitingCase;
import org.tunica.pastcases.WaitingRoom;
import org.tunica.store.Actor;
import org.tunica.store.KeptPastCase;
import org.tunica.store.Page;
import org.tunica.store.PastCaseShelf;
import org.tunica.store.PastCaseState;
import org.tunica.store.Store;
import org.tunica.treatment.TreatedPlan;

/** Where past cases of a store are offered, looked at, released and taken out. Safe for several threads. */
public final class PastCaseDesk {
    private static final int LOOKED_AT_FOR_SITE = 20;
    private static final Pattern SITE = Pattern.compile("\"site\":\"(" + PastCase.SITE + ")\"");
    private static final String ON_A_LINE = "past case";

    private final Tunica tunica;
    private final Store store;
    private final PastCaseShelf shelf;
    private final ShelfMemory memory;

    /** With the rules of an engine, over a store. */
    public PastCaseDesk(Tunica tunica, Store store) {
        this.tunica = tunica;
        this.store = store;
        this.shelf = store.pastCases();
        this.memory = new ShelfMemory(tunica, shelf);
    }

    /**
     * A case that waits for somebody to look at it.
     *
     * @param kept what is kept, and would be released, to the last byte
     * @param place the crowd it would stand in if all that wait were released together
     */
    public record Waiting(KeptPastCase kept, WaitingCase read, Release.Place place) {
        /** What whoever releases it gives back. */
        public String digest() {
            return new WaitingRoom.Line(kept.line()).digest();
        }
    }

    /**
     * All that wait, in the order of their random ids, so that their order tells nothing.
     *
     * @param unreadable ids of those that the rules in force cannot read
     */
    public record WaitingList(List<Waiting> cases, List<String> unreadable) {
        public WaitingList {
            cases = List.copyOf(cases);
            unreadable = List.copyOf(unreadable);
        }

        /** One of them. */
        public Optional<Waiting> one(String id) {
            return cases.stream().filter(one -> one.kept().id().equals(id)).findFirst();
        }
    }

    /**
     * Takes the person out of a finished case and lets it wait.
     *
     * @param ids random ids as {@link PastCase#ID} wants them
     * @throws FaultyInput with every reason why it cannot become a past case, or when one that says the same is there
     */
    public WaitingCase offer(Actor by, Finished finished, TreatedPlan planned, Supplier<String> ids) {
        WaitingCase waiting = tunica.pastCases().anonymise(finished, planned, ids);
        String line = tunica.pastCases().toLine(waiting);
        // looked for and kept in one: two who offer the same at once would both find none
        store.together(() -> {
            memory.twin(line, waiting.id()).ifPresent(PastCaseDesk::refuse);
            return shelf.offer(by, waiting.id(), line);
        });
        return waiting;
    }

    private static void refuse(KeptPastCase twin) {
        throw new FaultyInput(
                "finished case",
                List.of(new Fault(
                        "patient, veins and treatment",
                        "say the same as " + twin.id() + ", which " + standing(twin)
                                + "; a case counts once. Where it is the same and more is known by now, have that one"
                                + (twin.state() == PastCaseState.WAITING ? " refused" : " withdrawn")
                                + " first")));
    }

    private static String standing(KeptPastCase one) {
        return one.state() == PastCaseState.WAITING ? "waits already" : "is released";
    }

    /** The pseudonym of the clinic under which the last cases were kept here; empty while there is none, or several. */
    public Optional<String> site() {
        Set<String> sites = new HashSet<>();
        for (PastCaseState state : List.of(PastCaseState.WAITING, PastCaseState.RELEASED)) {
            shelf.in(state, Page.newest(LOOKED_AT_FOR_SITE)).forEach(one -> {
                Matcher site = SITE.matcher(one.line());
                sites.add(site.find() ? site.group(1) : "");
            });
        }
        return sites.size() == 1 ? sites.stream().findFirst().filter(site -> !site.isEmpty()) : Optional.empty();
    }

    /** All that wait. */
    public WaitingList waiting() {
        List<KeptPastCase> kept = kept(PastCaseState.WAITING);
        kept.sort(Comparator.comparing(KeptPastCase::id));
        List<KeptPastCase> readable = new ArrayList<>();
        List<WaitingCase> read = new ArrayList<>();
        List<String> unreadable = new ArrayList<>();
        for (KeptPastCase one : kept) {
            try {
                read.add(tunica.pastCases().readWaitingCase(ON_A_LINE, bytes(one)));
                readable.add(one);
            } catch (FaultyInput e) {
                unreadable.add(one.id());
            }
        }
        List<Release.Place> places = memory.places(read);
        List<Waiting> waiting = new ArrayList<>();
        for (int i = 0; i < read.size(); i++) {
            waiting.add(new Waiting(readable.get(i), read.get(i), places.get(i)));
        }
        return new WaitingList(waiting, unreadable);
    }

    private List<KeptPastCase> kept(PastCaseState state) {
        List<KeptPastCase> all = new ArrayList<>();
        Page page = Page.newest(Page.LONGEST);
        List<KeptPastCase> some;
        do {
            some = shelf.in(state, page);
            all.addAll(some);
            page = some.isEmpty() ? page : page.after(some.get(some.size() - 1).stamp());
        } while (some.size() == Page.LONGEST);
        return all;
    }

    /**
     * Tells less of a case that waits.
     *
     * @throws FaultyInput when no case of that id waits, or it does not name what is to be left out
     */
    public void coarsen(Actor by, String id, Set<Coarsening.What> less, Set<String> without) {
        Waiting waiting = waiting()
                .one(id)
                .orElseThrow(
                        () -> new FaultyInput("cases", List.of(new Fault("ID", "no case of that name waits here"))));
        WaitingCase coarser = tunica.pastCases().coarser(waiting.read(), less, without);
        shelf.rewrite(by, waiting.kept(), tunica.pastCases().toLine(coarser));
    }

    /**
     * Releases those cases of whose lines the digests are, all or none.
     *
     * @throws FaultyInput when a digest is of no line that waits, or a case would stand in too small a crowd
     */
    public List<PastCase> release(Actor by, Set<String> digests) {
        List<Waiting> chosen = waiting().cases().stream()
                .filter(one -> digests.contains(one.digest()))
                .toList();
        Set<String> known = new HashSet<>();
        chosen.forEach(one -> known.add(one.digest()));
        Faults faults = new Faults();
        digests.stream()
                .filter(digest -> !known.contains(digest))
                .forEach(digest -> faults.add(
                        "digest", "no waiting line has one of those given; look again, it may have changed since"));
        faults.throwIfAny("release");
        return store.together(() -> {
            List<PastCase> cases =
                    memory.released(chosen.stream().map(Waiting::read).toList());
            for (int i = 0; i < cases.size(); i++) {
                shelf.release(by, chosen.get(i).kept(), tunica.pastCases().toLine(cases.get(i)));
            }
            return cases;
        });
    }

    /** Refuses a case that waits; its text is forgotten. */
    public void refuse(Actor by, String id) {
        shelf.refuse(by, id);
    }

    /** Takes a released case out; its text is forgotten. */
    public void withdraw(Actor by, String id) {
        shelf.withdraw(by, id);
    }

    /** What is released here at this moment. */
    public Released released() {
        return new Released(
                new ReleasedCases(tunica, shelf, 0, store.audit().head().number()));
    }

    /**
     * Takes in every past case of a file, packed with gzip or not: they were released where they come from.
     *
     * @return how many were not here before
     * @throws FaultyInput with the faults of each line, and the cases that are here otherwise; then nothing was taken in
     */
    public long bringIn(Actor by, Path file, CaseProgress progress) {
        return new BringingIn(tunica, store, by).all(file, progress);
    }

    private static byte[] bytes(KeptPastCase one) {
        return one.line().getBytes(StandardCharsets.UTF_8);
    }
}
