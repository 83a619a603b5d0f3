package org.tunica.cli;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.tunica.store.PartBook;
import org.tunica.store.StoreUnavailable;

/**
 * Lets servers over one database start anew one after the other, so that a caller always finds one. Nobody waits for long: a
 * release that is no longer in force must not be served on because another server is slow or died at its turn.
 */
final class RestartTurn {
    /** So long a server waits for its turn, and so long it may take to start anew before the next does so, too. */
    static final Duration LONGEST_WAIT = Duration.ofMinutes(1);

    private static final String WORK = "start anew";
    private static final String NOTHING = "";

    private final Optional<PartBook> parts;
    private final Clock clock;
    private final String owner = UUID.randomUUID().toString();
    private Optional<Instant> waitingSince = Optional.empty();

    /** @param parts shared with the other servers; empty where there is none */
    RestartTurn(Optional<PartBook> parts, Clock clock) {
        this.parts = parts;
        this.clock = clock;
    }

    /** Whether this server may start anew now; asked again and again while it waits. */
    boolean comes() {
        Instant since = waitingSince.orElseGet(clock::instant);
        waitingSince = Optional.of(since);
        return parts.isEmpty() || taken(parts.get()) || !clock.instant().isBefore(since.plus(LONGEST_WAIT));
    }

    /** Tells that there is nothing to start anew for, or no longer: a rollback may come before the turn. */
    void forget() {
        waitingSince = Optional.empty();
    }

    private boolean taken(PartBook book) {
        try {
            return book.take(WORK, 0, NOTHING, owner, LONGEST_WAIT);
        } catch (StoreUnavailable e) {
            return false; // asked again soon, and not for ever
        }
    }

    /** Tells that this server answers again. */
    void over() {
        if (waitingSince.isPresent()) {
            forget();
            parts.ifPresent(this::giveBack);
        }
    }

    private void giveBack(PartBook book) {
        try {
            book.hold(owner, Duration.ofMillis(-1)); // over within this very millisecond
        } catch (StoreUnavailable e) {
            // the lease runs out by itself
        }
    }
}
