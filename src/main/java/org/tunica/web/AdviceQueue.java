package org.tunica.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.concurrent.PriorityBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.tunica.plan.Advice;

/**
 * Whole advices computed behind: first those somebody waits for, then those whose callers were answered with what was known, each
 * in the order they came. Knows how long those ahead will likely take, so that nobody waits for what cannot come in time: one who
 * waits in vain only makes the crowd larger.
 */
final class AdviceQueue implements AutoCloseable {
    /** So much of what an advice takes is carried over from those before: a few slow ones are forgotten after some ten others. */
    private static final double KEPT_OF_BEFORE = 0.8;

    private final Clock clock;
    private final int threads;
    private final int mostWaiting;
    private final ThreadPoolExecutor behind;
    private long entered;
    private int running;
    private int hurriedWaiting;
    private double usualNs;

    /**
     * @param clock tells how long an advice takes
     * @param threads how many are computed at once, at least 1
     * @param mostWaiting how many may wait for a thread, at least 1
     */
    AdviceQueue(Clock clock, int threads, int mostWaiting) {
        this.clock = clock;
        this.threads = threads;
        this.mostWaiting = mostWaiting;
        this.behind = new ThreadPoolExecutor(
                threads, threads, 0, TimeUnit.SECONDS, new PriorityBlockingQueue<>(mostWaiting), work -> {
                    Thread thread = new Thread(work, "advice");
                    thread.setDaemon(true);
                    return thread;
                });
        behind.prestartAllCoreThreads(); // a thread made for a task would take it past the order of the queue
    }

    /** Computes an advice when its turn comes; nothing when too many wait. */
    synchronized Optional<Place> enter(Callable<Advice> work) {
        if (behind.isShutdown() || behind.getQueue().size() >= mostWaiting) {
            return Optional.empty();
        }
        Place place = new Place(work, entered++);
        behind.execute(place);
        return Optional.of(place);
    }

    /**
     * Lets a place before all that nobody waits for, if its turn then likely comes within a time. What its own advice takes is
     * not foreseen, as a wall met before is many times quicker than a new one: one who is next always waits.
     *
     * @return whether to wait
     */
    synchronized boolean hurry(Place place, Duration time) {
        if (place.started || place.hurried) {
            return true;
        }
        int ahead = Math.max(0, running + hurriedWaiting - (threads - 1));
        if (behind.isShutdown() || ahead * usualNs / threads > time.toNanos()) {
            return false;
        }
        if (behind.remove(place)) {
            place.hurried = true;
            hurriedWaiting++;
            behind.execute(place);
        }
        return true;
    }

    private synchronized void begin(Place place) {
        place.started = true;
        running++;
        if (place.hurried) {
            hurriedWaiting--;
        }
    }

    /** Counts an advice as done before anybody is told that it is. */
    private Advice timed(Callable<Advice> work) throws Exception {
        Instant from = clock.instant();
        try {
            return work.call();
        } finally {
            end(Duration.between(from, clock.instant()).toNanos());
        }
    }

    private synchronized void end(long tookNs) {
        running--;
        usualNs = usualNs == 0 ? tookNs : KEPT_OF_BEFORE * usualNs + (1 - KEPT_OF_BEFORE) * tookNs;
    }

    @Override
    public synchronized void close() {
        behind.shutdownNow();
    }

    /** A place in the queue, and the advice once it is computed. Its marks change under the lock of the queue. */
    final class Place extends FutureTask<Advice> implements Comparable<Place> {
        private static final Comparator<Place> ORDER =
                Comparator.<Place, Boolean>comparing(place -> !place.hurried).thenComparing(place -> place.number);

        private final long number;
        private boolean hurried;
        private boolean started;

        private Place(Callable<Advice> work, long number) {
            super(() -> timed(work));
            this.number = number;
        }

        @Override
        public void run() {
            begin(this);
            super.run();
        }

        @Override
        public int compareTo(Place other) {
            return ORDER.compare(this, other);
        }
    }
}
