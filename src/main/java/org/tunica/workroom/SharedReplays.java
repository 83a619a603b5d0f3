package org.tunica.workroom;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.tunica.Replays;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.releases.ChangeDesk;
import org.tunica.releases.Engines;
import org.tunica.releases.Program;
import org.tunica.replay.ReplayRequest;
import org.tunica.store.Actor;
import org.tunica.store.OutOfDate;
import org.tunica.store.ReplayBook;
import org.tunica.store.SharedReplay;
import org.tunica.store.Store;
import org.tunica.store.StoreUnavailable;

/**
 * Replays that the servers over one database do together. Each looks now and then whether one is asked for and takes parts of
 * it; whoever comes to the end first keeps the result, which is the same bytes at all of them. A server that dies leaves its
 * parts to the others.
 */
final class SharedReplays implements ReplayRoom {
    private static final int LOOKS_EVERY_MS = 1_000;
    private static final int PATIENCE_MS = 10_000;

    private final Store store;
    private final ReplayBook book;
    private final Engines engines;
    private final Reviews reviews;
    private final Clock clock;
    private final ScheduledExecutorService worker = Executors.newSingleThreadScheduledExecutor(SharedReplays::thread);

    SharedReplays(Store store, Engines engines, Reviews reviews, Clock clock) {
        this.store = store;
        this.book = store.replays().orElseThrow();
        this.engines = engines;
        this.reviews = reviews;
        this.clock = clock;
        worker.scheduleWithFixedDelay(this::look, LOOKS_EVERY_MS, LOOKS_EVERY_MS, TimeUnit.MILLISECONDS);
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "replay-room");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }

    @Override
    public Optional<Running> running() {
        return book.running()
                .map(one -> new Running(
                        one.id(),
                        "change " + one.change(),
                        one.by(),
                        one.since(),
                        one.doneCount(),
                        ReplayReading.DEMO_CASES + one.inventedCount()));
    }

    @Override
    public List<String> failure(Sides sides) {
        return book.one(sides.key()).stream()
                .flatMap(one -> one.failure().lines())
                .toList();
    }

    @Override
    public Optional<String> finished(Sides sides) {
        return book.one(sides.key()).map(SharedReplay::result).filter(result -> !result.isEmpty());
    }

    @Override
    public void begin(Actor by, String change, Tunica against, Sides sides, ReplayRequest.Invented invented) {
        reviews.loaded(sides.draft());
        try {
            book.begin(
                    by,
                    SharedReplay.asked(
                            sides.key(),
                            change,
                            sides.against().digest(),
                            sides.draft().digest(),
                            invented.seed(),
                            invented.count(),
                            by.id(),
                            clock.instant()));
        } catch (OutOfDate e) {
            throw fault(e.getMessage());
        }
    }

    private void look() {
        try {
            book.running().ifPresent(this::work);
        } catch (StoreUnavailable e) {
            // looks again in a moment
        }
    }

    private void work(SharedReplay asked) {
        try (StoreParts parts = new StoreParts(store.parts().orElseThrow(), Program.running())) {
            Replays replays = sides(asked);
            Optional<ReplayRequest.Invented> made = asked.inventedCount() > 0
                    ? Optional.of(new ReplayRequest.Invented(asked.seed(), asked.inventedCount()))
                    : Optional.empty();
            ReplayRequest request = new ReplayRequest(
                    Optional.empty(), Optional.empty(), made, Optional.empty(), Optional.of(parts), 1);
            book.finished(
                    asked.id(),
                    replays.toJson(replays.prepare(request).run((done, all, cases) -> book.at(asked.id(), cases))));
        } catch (FaultyInput e) {
            book.failed(asked.id(), e.faults().stream().map(Fault::toString).collect(Collectors.joining("\n")));
        } catch (StoreUnavailable e) {
            throw e;
        } catch (RuntimeException | StackOverflowError e) {
            if (!worker.isShutdown()) {
                book.failed(asked.id(), "The replay failed: " + e.getClass().getSimpleName());
            }
        }
    }

    /** @throws FaultyInput when the rules are others by now than those that were asked about */
    private Replays sides(SharedReplay asked) {
        ChangeDesk changes = new ChangeDesk(store, engines);
        Bundle draft = changes.rules(asked.change());
        if (!changes.start().bundle().digest().equals(asked.against())) {
            throw fault("another release came into force since; begin it again");
        }
        if (!draft.digest().equals(asked.draft())) {
            throw fault("the change was handed in with other rules since; begin it again");
        }
        return engines.inForce().tunica().against(reviews.loaded(draft));
    }

    private static FaultyInput fault(String says) {
        return new FaultyInput("replay", List.of(new Fault("replay", says)));
    }

    @Override
    public void close() {
        worker.shutdownNow();
        try {
            worker.awaitTermination(PATIENCE_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
