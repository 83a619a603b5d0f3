package org.tunica.workroom;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.proposal.ChangeChecks;
import org.tunica.proposal.CheckedChange;
import org.tunica.proposal.NewRecord;
import org.tunica.proposal.Opening;
import org.tunica.proposal.WorkingCopy;
import org.tunica.releases.ChangeDesk;
import org.tunica.store.Store;

/** The working copies of a place. Safe for several threads; one of them begins a change at a time. */
public final class Workroom {
    private static final String CHANGES = "changes";
    private static final String NUMBER = "\\d{4}";

    private final Store store;
    private final ChangeDesk desk;
    private final Reviews reviews;
    private final Clock clock;

    /** The working copies beside a store. */
    public Workroom(Store store, ChangeDesk desk, Reviews reviews, Clock clock) {
        this.store = store;
        this.desk = desk;
        this.reviews = reviews;
        this.clock = clock;
    }

    /** A working copy in the folder, or why it cannot be used. */
    public record Listed(String number, Optional<Draft> draft, List<Fault> faults) {}

    /** Where working copies are, when the data are in a folder. */
    public Optional<Path> folder() {
        return store.folder().map(folder -> folder.resolve(CHANGES));
    }

    /** Every working copy, the last number first. */
    public List<Listed> all() {
        Optional<Path> folder = folder().filter(Files::isDirectory);
        if (folder.isEmpty()) {
            return List.of();
        }
        try (Stream<Path> found = Files.list(folder.get())) {
            List<Listed> all = new ArrayList<>();
            found.map(path -> path.getFileName().toString())
                    .filter(name -> name.matches(NUMBER))
                    .sorted(Comparator.reverseOrder())
                    .forEach(number -> all.add(listed(number)));
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Listed listed(String number) {
        try {
            return new Listed(number, draft(number), List.of());
        } catch (FaultyInput e) {
            return new Listed(number, Optional.empty(), e.faults());
        }
    }

    /**
     * One working copy.
     *
     * @throws FaultyInput when what it began with was changed, or it cannot be read
     */
    public Optional<Draft> draft(String number) {
        return folder().filter(folder -> number.matches(NUMBER))
                .map(folder -> folder.resolve(number))
                .filter(path -> Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
                .map(path -> new Draft(WorkingCopy.in(path)));
    }

    /**
     * Begins a change with the release in force and its scenarios.
     *
     * @throws FaultyInput when the data are in no folder, or the folder cannot be written
     */
    public Draft begin(String author, NewRecord first) {
        return begin(author, first, desk.scenarios());
    }

    /** The same with other scenarios. */
    public synchronized Draft begin(String author, NewRecord first, SortedMap<String, String> scenarios) {
        Path folder = folder().orElseThrow(() -> fault(
                "folder",
                "the data are in a database, and a working copy needs a folder, which this server was not given; begin the"
                        + " change at the command line, in a folder of your own"));
        ChangeDesk.Start start = desk.start();
        String number = free(folder, start);
        return begun(start, number, author, first, scenarios, folder.resolve(number));
    }

    /** The same in a folder of somebody's own. */
    public Draft begin(String author, NewRecord first, SortedMap<String, String> scenarios, Path folder) {
        ChangeDesk.Start start = desk.start();
        String number = NewRecord.nextNumber(reviews.of(start.bundle()).knowledge());
        return begun(start, number, author, first, scenarios, folder);
    }

    private Draft begun(
            ChangeDesk.Start start,
            String number,
            String author,
            NewRecord first,
            SortedMap<String, String> scenarios,
            Path folder) {
        Opening opening =
                new Opening(number, author, start.release(), start.bundle().digest(), today());
        try {
            return new Draft(
                    WorkingCopy.begin(folder, start.bundle(), scenarios, opening, first.draft(number, today())));
        } catch (IOException e) {
            throw fault(folder.toString(), "cannot be written: " + e.getMessage());
        }
    }

    /** The first number that neither a record, nor a working copy, nor a change that was handed in has. */
    private String free(Path folder, ChangeDesk.Start start) {
        String first = NewRecord.nextNumber(reviews.of(start.bundle()).knowledge());
        return Stream.iterate(Integer.parseInt(first), next -> next + 1)
                .map(next -> String.format(Locale.ROOT, "%04d", next))
                .filter(number -> !Files.exists(folder.resolve(number), LinkOption.NOFOLLOW_LINKS))
                .filter(number -> store.changes().steps(number).isEmpty())
                .findFirst()
                .orElseThrow();
    }

    /** Every check of a working copy, as of today. */
    public CheckedChange checked(Draft draft) {
        return new ChangeChecks(draft.copy(), reviews::of, today()).run();
    }

    /** What does not load in a working copy, with file and line; nothing when all of it does. */
    public List<Fault> faults(Draft draft) {
        try {
            reviews.of(draft.copy().after());
            return List.of();
        } catch (FaultyInput e) {
            return e.faults();
        }
    }

    /** The day, UTC. */
    public LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("change", List.of(new Fault(place, says)));
    }
}
