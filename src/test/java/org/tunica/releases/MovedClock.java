package org.tunica.releases;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands still until somebody moves it. */
final class MovedClock extends Clock {
    private Instant now;

    MovedClock(Instant start) {
        this.now = start;
    }

    void move(Duration by) {
        now = now.plus(by);
    }

    void set(Instant moment) {
        now = moment;
    }

    @Override
    public Instant instant() {
        return now;
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
