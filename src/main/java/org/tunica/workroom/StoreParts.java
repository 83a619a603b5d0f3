package org.tunica.workroom;

import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.tunica.releases.Program;
import org.tunica.replay.SharedParts;
import org.tunica.store.PartBook;
import org.tunica.store.StoreUnavailable;

/**
 * Parts of replays that lie in a database. While it is open what it took stays its own; when its program dies, that is free
 * for others once its time has run out. Programs of another version share nothing with it.
 */
public final class StoreParts implements SharedParts, AutoCloseable {
    private static final Duration LEASE = Duration.ofSeconds(15);
    private static final Duration BETWEEN_SIGNS = Duration.ofSeconds(3);
    private static final Duration KEPT = Duration.ofDays(30);

    private final PartBook book;
    private final String program;
    private final String owner = UUID.randomUUID().toString();
    private final ScheduledExecutorService signs = Executors.newSingleThreadScheduledExecutor(StoreParts::thread);

    /** Parts of a program; those nobody touched for a month are forgotten. */
    public StoreParts(PartBook book, Program program) {
        this.book = book;
        this.program = program.version();
        book.forget(KEPT);
        signs.scheduleAtFixedRate(
                this::hold, BETWEEN_SIGNS.toMillis(), BETWEEN_SIGNS.toMillis(), TimeUnit.MILLISECONDS);
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "replay-parts");
        thread.setDaemon(true);
        return thread;
    }

    private void hold() {
        try {
            book.hold(owner, LEASE);
        } catch (StoreUnavailable e) {
            // tried again in a moment; at worst another program computes the same
        }
    }

    private String work(Part part) {
        return program + " " + part.replay();
    }

    @Override
    public Optional<String> find(Part part) {
        return book.result(work(part), part.number(), part.cases());
    }

    @Override
    public boolean take(Part part) {
        return book.take(work(part), part.number(), part.cases(), owner, LEASE);
    }

    @Override
    public void keep(Part part, String line) {
        book.keep(work(part), part.number(), part.cases(), line);
    }

    @Override
    public void close() {
        signs.shutdownNow();
    }
}
