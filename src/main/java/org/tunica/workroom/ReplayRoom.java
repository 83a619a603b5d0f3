package org.tunica.workroom;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.tunica.Replays;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.replay.ReplayRequest;
import org.tunica.replay.WorkFolder;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/**
 * Replays behind the scenes, one at a time, and those that are finished. Safe for several threads; closing it ends the one
 * that runs, which goes on where it was when it is started again.
 */
public final class ReplayRoom implements AutoCloseable {
    private static final String FOLDER = "replays";
    private static final int SHORT = 16;
    private static final int AFTER_ALGORITHM = "sha256:".length();
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Store store;
    private final Reviews reviews;
    private final Clock clock;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(ReplayRoom::thread);
    private final AtomicReference<Optional<Running>> running = new AtomicReference<>(Optional.empty());
    private final Map<String, List<String>> failures = new ConcurrentHashMap<>();

    /** The replays beside a store. */
    public ReplayRoom(Store store, Reviews reviews, Clock clock) {
        this.store = store;
        this.reviews = reviews;
        this.clock = clock;
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "replay-room");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }

    /**
     * What is replayed now.
     *
     * @param of what, in words, for example "change 0091"
     * @param by who began it
     * @param casesDone so far
     * @param casesAll that there are
     */
    public record Running(String key, String of, String by, Instant since, long casesDone, long casesAll) {
        private Running at(long cases) {
            return new Running(key, of, by, since, cases, casesAll);
        }
    }

    /**
     * Two sides of a replay.
     *
     * @param against rules in force, or those the change began with
     * @param draft the rules proposed
     */
    public record Sides(Bundle against, Bundle draft) {
        String key() {
            return brief(against) + "-" + brief(draft);
        }

        private static String brief(Bundle bundle) {
            return bundle.digest().substring(AFTER_ALGORITHM, AFTER_ALGORITHM + SHORT);
        }
    }

    /** What is replayed now, if anything is. */
    public Optional<Running> running() {
        return running.get();
    }

    /** What is replayed now, when it is these two. */
    public Optional<Running> running(Sides sides) {
        return running().filter(now -> now.key().equals(sides.key()));
    }

    /** Why the last replay of these two came to no result; empty when none failed. */
    public List<String> failure(Sides sides) {
        return failures.getOrDefault(sides.key(), List.of());
    }

    /** The finished replay of these two, {@code tunica-replay/1} byte for byte. */
    public Optional<String> finished(Sides sides) {
        return store.folder()
                .map(folder -> file(folder, sides))
                .filter(Files::isRegularFile)
                .map(ReplayRoom::read);
    }

    private static Path file(Path folder, Sides sides) {
        return folder.resolve(FOLDER).resolve(sides.key() + ".json");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Begins a replay of the demonstration cases and so many made-up ones.
     *
     * @param of what, in words
     * @param against the engine of what is in force, so that the result bears its name
     * @throws FaultyInput when another runs, the data are in no folder, or the draft does not load
     */
    public void begin(Actor by, String of, Tunica against, Sides sides, ReplayRequest.Invented invented) {
        Path folder = store.folder()
                .orElseThrow(
                        () -> fault("the data are in a database, and a replay needs a folder; run it at the command"
                                + " line and hand its result in with the release"));
        Tunica draft = reviews.loaded(sides.draft());
        Running first =
                new Running(sides.key(), of, by.id(), clock.instant(), 0, ReplayReading.DEMO_CASES + invented.count());
        if (!running.compareAndSet(Optional.empty(), Optional.of(first))) {
            throw fault(
                    running()
                                    .map(now -> now.of() + " is being replayed, begun by " + now.by())
                                    .orElse("another ran") + "; one runs at a time");
        }
        failures.remove(sides.key());
        store.audit().note(by, Act.REPLAY_BEGUN, new Subject("replay", sides.key()));
        worker.execute(() -> work(folder, sides, against.against(draft), invented));
    }

    private void work(Path folder, Sides sides, Replays replays, ReplayRequest.Invented invented) {
        try (WorkFolder kept = WorkFolder.of(folder.resolve(FOLDER).resolve("work"))) {
            Optional<ReplayRequest.Invented> made = invented.count() > 0 ? Optional.of(invented) : Optional.empty();
            ReplayRequest request = new ReplayRequest(Optional.empty(), made, Optional.of(kept), 1);
            String json = replays.toJson(replays.prepare(request)
                    .run((done, all, cases) -> running.updateAndGet(now -> now.map(one -> one.at(cases)))));
            keep(file(folder, sides), json);
        } catch (FaultyInput e) {
            failures.put(sides.key(), e.faults().stream().map(Fault::toString).toList());
        } catch (IOException | RuntimeException | StackOverflowError e) {
            failures.put(
                    sides.key(), List.of("The replay failed: " + e.getClass().getSimpleName()));
        } finally {
            running.set(Optional.empty());
        }
    }

    private static void keep(Path file, String json) throws IOException {
        Path fresh = Files.createTempFile(file.getParent(), "replay", null);
        Files.writeString(fresh, json);
        Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    private static FaultyInput fault(String says) {
        return new FaultyInput("replay", List.of(new Fault("replay", says)));
    }

    @Override
    public void close() {
        worker.shutdownNow();
        try {
            worker.awaitTermination(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
