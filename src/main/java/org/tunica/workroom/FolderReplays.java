package org.tunica.workroom;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
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
import org.tunica.replay.ReplayRequest;
import org.tunica.replay.WorkFolder;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** Replays in the folder of a store that one program serves from. */
final class FolderReplays implements ReplayRoom {
    private static final String FOLDER = "replays";
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Store store;
    private final Reviews reviews;
    private final Clock clock;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(FolderReplays::thread);
    private final AtomicReference<Optional<Running>> running = new AtomicReference<>(Optional.empty());
    private final Map<String, List<String>> failures = new ConcurrentHashMap<>();

    /** The replays beside a store. */
    FolderReplays(Store store, Reviews reviews, Clock clock) {
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

    @Override
    public Optional<Running> running() {
        return running.get();
    }

    @Override
    public List<String> failure(Sides sides) {
        return failures.getOrDefault(sides.key(), List.of());
    }

    @Override
    public Optional<String> finished(Sides sides) {
        return store.folder()
                .map(folder -> file(folder, sides))
                .filter(Files::isRegularFile)
                .map(FolderReplays::read);
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

    @Override
    public void begin(Actor by, String change, Tunica against, Sides sides, ReplayRequest.Invented invented) {
        Path folder = store.folder().orElseThrow();
        Tunica draft = reviews.loaded(sides.draft());
        Running first = new Running(
                sides.key(),
                "change " + change,
                by.id(),
                clock.instant(),
                0,
                ReplayReading.DEMO_CASES + invented.count());
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
                    .run((done, all, cases) -> running.updateAndGet(now -> now.map(one -> at(one, cases)))));
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

    private static Running at(Running one, long cases) {
        return new Running(one.key(), one.of(), one.by(), one.since(), cases, one.casesAll());
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
