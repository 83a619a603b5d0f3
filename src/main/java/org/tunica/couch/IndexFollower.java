package org.tunica.couch;

import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tunica.Tunica;
import org.tunica.archive.ReleasedCases;
import org.tunica.cluster.Cluster;
import org.tunica.pastcases.CaseProgress;
import org.tunica.store.Store;

/**
 * Brings a shared index up to the past cases released and withdrawn, some seconds after they were. Of several servers over one
 * database one does it; when that one dies, another takes over.
 */
final class IndexFollower implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(IndexFollower.class);
    private static final String WORK = "case index";
    private static final Duration LEASE = Duration.ofMinutes(1);
    private static final int LOOKS_EVERY_MS = 3_000;

    private final Tunica tunica;
    private final Store store;
    private final Cluster cluster;
    private final PastLibrary past;
    private final String owner = UUID.randomUUID().toString();
    private final ScheduledExecutorService workers = Executors.newScheduledThreadPool(2, IndexFollower::thread);

    IndexFollower(Tunica tunica, Store store, Cluster cluster, PastLibrary past) {
        this.tunica = tunica;
        this.store = store;
        this.cluster = cluster;
        this.past = past;
        workers.scheduleWithFixedDelay(this::look, 0, LOOKS_EVERY_MS, TimeUnit.MILLISECONDS);
        store.parts()
                .ifPresent(book -> workers.scheduleWithFixedDelay(
                        () -> book.hold(owner, LEASE),
                        LEASE.toMillis() / 3,
                        LEASE.toMillis() / 3,
                        TimeUnit.MILLISECONDS));
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "index-follower");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }

    private void look() {
        try {
            follow();
        } catch (RuntimeException e) {
            // asked again soon; the pages say when past cases cannot be searched
            LOG.warn(
                    "the shared index could not be brought up: {}", e.getClass().getSimpleName());
        }
    }

    private void follow() {
        long last = past.lastChange();
        Optional<String> there = cluster.digest();
        if (there.equals(Optional.of(ReleasedCases.digest(last)))) {
            return;
        }
        boolean ours = store.parts()
                .map(book -> book.take(WORK, last, ReleasedCases.digest(last), owner, LEASE))
                .orElse(true);
        if (ours) {
            bringUp(there.map(ReleasedCases::change).orElse(0L), there.isPresent(), last);
        }
    }

    private void bringUp(long from, boolean exists, long last) {
        ReleasedCases cases = new ReleasedCases(tunica, store.pastCases(), from, last);
        if (exists && from > 0) {
            cases.each((where, pastCase) -> {});
            cluster.follow(new ReleasedCases(tunica, store.pastCases(), from, last), cases.goneIds());
        } else {
            cluster.rebuild(cases, Cluster.Spread.USUAL.over(true), CaseProgress.NONE);
        }
    }

    @Override
    public void close() {
        workers.shutdownNow();
    }
}
