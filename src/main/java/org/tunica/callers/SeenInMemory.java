package org.tunica.callers;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;

/**
 * The tokens seen by one process; a new process has seen none. Bounded for each issuer: when so many are remembered that are
 * still valid, every further one of that issuer counts as seen.
 */
public final class SeenInMemory implements SeenTokens {
    /** For an hour, 27 a second from one issuer. */
    static final int MOST_OF_AN_ISSUER = 100_000;

    private static final Duration BETWEEN_CLEANINGS = Duration.ofSeconds(30);

    private final Clock clock;
    private final Map<String, Map<String, Instant>> byIssuer = new ConcurrentHashMap<>();
    private final AtomicReference<Instant> nextCleaning;

    /** Nothing seen yet. */
    public SeenInMemory(Clock clock) {
        this.clock = clock;
        this.nextCleaning = new AtomicReference<>(clock.instant().plus(BETWEEN_CLEANINGS));
    }

    @Override
    public boolean firstTime(String issuer, String id, Instant until) {
        forgetOld();
        Map<String, Instant> seen = byIssuer.computeIfAbsent(issuer, any -> new ConcurrentHashMap<>());
        return seen.size() < MOST_OF_AN_ISSUER && seen.putIfAbsent(id, until) == null;
    }

    private void forgetOld() {
        Instant now = clock.instant();
        Instant due = nextCleaning.get();
        if (now.isAfter(due) && nextCleaning.compareAndSet(due, now.plus(BETWEEN_CLEANINGS))) {
            byIssuer.values().forEach(seen -> seen.values().removeIf(until -> until.isBefore(now)));
        }
    }
}
