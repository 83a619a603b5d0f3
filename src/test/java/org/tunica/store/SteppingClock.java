package org.tunica.store;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicLong;

/** A clock that moves on by a second each time it is read. */
final class SteppingClock extends Clock {
    static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    private final AtomicLong seconds = new AtomicLong();

    @Override
    public Instant instant() {
        return START.plusSeconds(seconds.getAndIncrement());
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
