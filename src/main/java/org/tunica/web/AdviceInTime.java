package org.tunica.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.fhir.Adviser;
import org.tunica.plan.AdviceSoFar;
import org.tunica.web.AdviceQueue.Place;

/**
 * Gives an advice in time: whole when it is computed by then, else as much as is known, while the rest is computed behind.
 * The same case asked twice is computed once. So the chart that is opened starts what the order needs a minute later.
 *
 * <p>Cases are remembered for a while, in memory alone and without any name: a case read from a record holds none. How many
 * wait is bounded; when the queue is full a case is answered with what is known, and computed when it is asked again. When
 * those ahead will likely take longer than the time left, the answer is what is known, at once, and the whole is there later.
 */
final class AdviceInTime implements AutoCloseable {
    private static final int MOST_REMEMBERED = 64;
    private static final int MOST_WAITING = 32;
    private static final Duration REMEMBERED_FOR = Duration.ofMinutes(10);

    private final Tunica tunica;
    private final Clock clock;
    private final Map<CaseFile, Asked> asked = new LinkedHashMap<>();
    private final AdviceQueue behind;

    /** What is known is told to as many at once as there are cores, in the order they came: the last waits no longer than need be. */
    private final Semaphore telling = new Semaphore(Runtime.getRuntime().availableProcessors(), true);

    AdviceInTime(Tunica tunica, Clock clock) {
        this.tunica = tunica;
        this.clock = clock;
        int threads =
                Math.max(1, Runtime.getRuntime().availableProcessors() - 1); // the heat model uses the others, too
        this.behind = new AdviceQueue(clock, threads, MOST_WAITING);
    }

    /** An adviser that answers within a time. */
    Adviser within(Duration time) {
        return caseFile -> advise(caseFile, clock.instant().plus(time));
    }

    private AdviceSoFar advise(CaseFile caseFile, Instant deadline) {
        Optional<Place> whole = whole(caseFile);
        if (whole.isPresent() && whole.get().isDone()) {
            return await(whole.get(), Duration.ZERO).orElseGet(() -> soFar(caseFile));
        }
        AdviceSoFar soFar = soFar(caseFile);
        Duration time = Duration.between(clock.instant(), deadline);
        return whole.filter(place -> behind.hurry(place, time))
                .flatMap(place -> await(place, time))
                .orElse(soFar);
    }

    private AdviceSoFar soFar(CaseFile caseFile) {
        telling.acquireUninterruptibly();
        try {
            return tunica.adviseSoFar(caseFile);
        } finally {
            telling.release();
        }
    }

    private static Optional<AdviceSoFar> await(Place whole, Duration left) {
        try {
            return Optional.of(AdviceSoFar.whole(whole.get(Math.max(0, left.toMillis()), TimeUnit.MILLISECONDS)));
        } catch (TimeoutException | CancellationException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException e) {
            throw new IllegalStateException("an advice could not be computed", e.getCause());
        }
    }

    /** The whole advice, being computed or done; nothing when too many wait. */
    private Optional<Place> whole(CaseFile caseFile) {
        synchronized (asked) {
            forget();
            Asked before = asked.get(caseFile);
            if (before != null) {
                return Optional.of(before.place());
            }
            Optional<Place> place = behind.enter(() -> tunica.advise(caseFile));
            place.ifPresent(taken -> asked.put(caseFile, new Asked(taken, clock.instant())));
            return place;
        }
    }

    /** Forgets what is old, and the oldest of too many; what is still computed may end. */
    private void forget() {
        Instant oldest = clock.instant().minus(REMEMBERED_FOR);
        asked.values().removeIf(one -> one.since().isBefore(oldest));
        while (asked.size() >= MOST_REMEMBERED) {
            asked.remove(asked.keySet().iterator().next());
        }
    }

    /** A case that was asked for. */
    private record Asked(Place place, Instant since) {}

    @Override
    public void close() {
        behind.close();
    }
}
