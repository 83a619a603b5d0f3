package org.tunica.releases;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.tunica.casefile.CaseFile;
import org.tunica.plan.Advice;
import org.tunica.store.Store;

/**
 * The rules a server runs, with the shadow behind: each advice is given at once and asked again of the next release when
 * there is time. How many wait is bounded; what does not fit is not counted, for the shadow may never slow an answer.
 */
public final class ServedRules implements AutoCloseable {
    private static final int MOST_WAITING = 100;
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Engines engines;
    private final Shadow shadow;
    private final ThreadPoolExecutor behind;
    private final Duration patience;

    /** The releases kept in a store, at the time of a clock, run by a program. */
    public ServedRules(Store store, Clock clock, Program program) {
        this(store, clock, program, PATIENCE);
    }

    /** @param patience how long the end waits for what is still to be counted */
    ServedRules(Store store, Clock clock, Program program, Duration patience) {
        this.patience = patience;
        this.engines = new Engines(new ReleaseRecords(store), clock, program, this::given);
        this.shadow = new Shadow(store, engines);
        this.behind = new ThreadPoolExecutor(
                1,
                1,
                0,
                TimeUnit.SECONDS,
                new ArrayBlockingQueue<>(MOST_WAITING),
                ServedRules::thread,
                new ThreadPoolExecutor.DiscardPolicy());
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "shadow");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }

    /**
     * What is in force now.
     *
     * @throws org.tunica.casefile.FaultyInput when it may not be used
     */
    public Engines.Engine inForce() {
        return engines.inForce();
    }

    private void given(CaseFile caseFile, Advice advice) {
        behind.execute(() -> engines.loaded(advice.release().version()).ifPresent(spoke -> {
            byte[] json = spoke.tunica().toJson(caseFile).getBytes(StandardCharsets.UTF_8);
            shadow.beside(spoke, json, advice);
        }));
    }

    /** Lets what waits come to its end, for a while. */
    @Override
    public void close() {
        behind.shutdown();
        try {
            if (!behind.awaitTermination(patience.toMillis(), TimeUnit.MILLISECONDS)) {
                behind.shutdownNow();
            }
        } catch (InterruptedException e) {
            behind.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }
}
