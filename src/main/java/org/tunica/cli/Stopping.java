package org.tunica.cli;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Waits until the process is told to end, and lets it end only after everything was closed in order: requests first, then
 * what is kept, then what was kept for this run alone.
 */
final class Stopping implements AutoCloseable {
    private final CountDownLatch asked = new CountDownLatch(1);
    private final CountDownLatch closed = new CountDownLatch(1);

    private Stopping() {}

    /** Listens for it from now on. */
    static Stopping whenAsked() {
        Stopping stopping = new Stopping();
        Runtime.getRuntime().addShutdownHook(new Thread(stopping::letClose, "stopping"));
        return stopping;
    }

    private void letClose() {
        asked.countDown();
        try {
            closed.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Waits for a while, and tells whether it is time to end. */
    boolean askedWithin(Duration time) throws InterruptedException {
        return asked.await(time.toMillis(), TimeUnit.MILLISECONDS);
    }

    @Override
    public void close() {
        closed.countDown();
    }
}
