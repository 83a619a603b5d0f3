package org.tunica.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.tunica.archive.StoredCases;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.releases.Program;
import org.tunica.replay.PastLines;
import org.tunica.replay.SharedParts;
import org.tunica.replay.WorkFolder;
import org.tunica.store.PartBook;
import org.tunica.store.Store;
import org.tunica.workroom.StoreParts;

/** What a replay reads from and writes to while it runs, closed in the order opposite to that of opening. */
final class ReplayMeans implements AutoCloseable {
    private final Deque<AutoCloseable> open = new ArrayDeque<>();
    private Optional<WorkFolder> work = Optional.empty();
    private Optional<PastLines> kept = Optional.empty();
    private Optional<SharedParts> shared = Optional.empty();

    private ReplayMeans() {}

    /**
     * Opens what was named.
     *
     * @throws FaultyInput when one of them cannot be used
     */
    static ReplayMeans of(Optional<Path> work, Optional<String> kept, Optional<String> shared) {
        ReplayMeans means = new ReplayMeans();
        try {
            means.work = work.map(folder -> means.closing(WorkFolder.of(folder)));
            means.kept = kept.map(place -> cases(means.store(place)));
            means.shared = shared.map(place -> means.closing(new StoreParts(means.parts(place), Program.running())));
            return means;
        } catch (RuntimeException e) {
            means.close();
            throw e;
        }
    }

    private static PastLines cases(Store store) {
        return new StoredCases(store.pastCases(), store.audit().head().number());
    }

    private PartBook parts(String place) {
        return store(place)
                .parts()
                .orElseThrow(() -> new FaultyInput(
                        "input",
                        List.of(new Fault(
                                "--shared",
                                "a folder is for one program; give the jdbc:postgresql: URL of a database"))));
    }

    private Store store(String place) {
        return closing(Store.existing(place, Clock.systemUTC()));
    }

    private <T extends AutoCloseable> T closing(T opened) {
        open.push(opened);
        return opened;
    }

    Optional<WorkFolder> work() {
        return work;
    }

    Optional<PastLines> kept() {
        return kept;
    }

    Optional<SharedParts> shared() {
        return shared;
    }

    @Override
    public void close() {
        for (AutoCloseable one : open) {
            try {
                one.close();
            } catch (RuntimeException e) {
                throw e;
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
