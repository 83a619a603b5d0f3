package org.tunica.web;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** How often each of many askers may ask in a minute. Safe for several threads. */
final class Rates {
    /** Who has not asked for the longest time is forgotten first, and begins anew. */
    private static final int MOST_ASKERS = 10_000;

    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final int perMinute;
    private final TimeMeter time;
    private final Map<String, Bucket> buckets = Collections.synchronizedMap(new Recent());

    Rates(int perMinute, Clock clock) {
        this.perMinute = perMinute;
        this.time = new ClockTime(clock);
    }

    /** Nought when the asker may ask now; else after how many whole seconds. */
    long secondsToWait(String asker) {
        Bucket bucket = buckets.computeIfAbsent(
                asker,
                any -> Bucket.builder()
                        .withCustomTimePrecision(time)
                        .addLimit(limit -> limit.capacity(perMinute).refillGreedy(perMinute, MINUTE))
                        .build());
        ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
        return probe.isConsumed()
                ? 0
                : 1 + Duration.ofNanos(probe.getNanosToWaitForRefill()).toSeconds();
    }

    private record ClockTime(Clock clock) implements TimeMeter {
        @Override
        public long currentTimeNanos() {
            return Duration.between(Instant.EPOCH, clock.instant()).toNanos();
        }

        @Override
        public boolean isWallClockBased() {
            return true;
        }
    }

    private static final class Recent extends LinkedHashMap<String, Bucket> {
        Recent() {
            super(64, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
            return size() > MOST_ASKERS;
        }
    }
}
