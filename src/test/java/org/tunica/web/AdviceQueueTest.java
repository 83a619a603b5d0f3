package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.tunica.plan.Advice;
import org.tunica.web.AdviceQueue.Place;

/** Who waits behind many is not made to wait, who is next is; whoever found no place is told so. */
@Timeout(60)
class AdviceQueueTest {
    private static final Duration DAY = Duration.ofDays(1);

    private final MovableClock clock = new MovableClock();
    private final CountDownLatch gate = new CountDownLatch(1);
    private final Semaphore begun = new Semaphore(0);

    @Test
    void beforeAnythingIsKnown_everybodyWaits_andAFullQueueSaysSo() throws Exception {
        try (AdviceQueue queue = new AdviceQueue(clock, 1, 3)) {
            begun(queue);
            Place last = null;
            for (int i = 0; i < 3; i++) {
                last = queue.enter(closed()).orElseThrow();
            }
            assertTrue(queue.hurry(last, Duration.ZERO), "what an advice takes is not known yet");
            assertTrue(queue.enter(closed()).isEmpty());
            gate.countDown();
        }
    }

    @Test
    void whoIsNext_waits_andWhoseTurnComesTooLateDoesNot() throws Exception {
        try (AdviceQueue queue = new AdviceQueue(clock, 2, 10)) {
            queue.enter(slow()).orElseThrow().get(1, TimeUnit.MINUTES);
            begun(queue);
            Place second = queue.enter(closed()).orElseThrow();
            assertTrue(queue.hurry(second, Duration.ZERO), "two are computed at once");
            begun.acquire();
            Place third = queue.enter(closed()).orElseThrow();
            assertFalse(queue.hurry(third, Duration.ofMillis(9)));
            assertTrue(queue.hurry(third, Duration.ofMillis(10)));
            gate.countDown();
            third.get(1, TimeUnit.MINUTES);
            assertTrue(queue.hurry(third, Duration.ZERO), "it is done");
        }
    }

    @Test
    void thoseSomebodyWaitsFor_comeFirst() throws Exception {
        List<String> order = Collections.synchronizedList(new ArrayList<>());
        try (AdviceQueue queue = new AdviceQueue(clock, 1, 10)) {
            begun(queue);
            List<Place> places = new ArrayList<>();
            for (String name : List.of("a", "b", "c", "d")) {
                places.add(queue.enter(() -> {
                            order.add(name);
                            return nothing();
                        })
                        .orElseThrow());
            }
            assertTrue(queue.hurry(places.get(3), DAY));
            assertTrue(queue.hurry(places.get(2), DAY));
            gate.countDown();
            for (Place place : places) {
                place.get(1, TimeUnit.MINUTES);
            }
        }
        assertEquals(List.of("c", "d", "a", "b"), order);
    }

    @Test
    void oneThatFails_leavesTheQueueToo() throws Exception {
        try (AdviceQueue queue = new AdviceQueue(clock, 1, 10)) {
            Place faulty = queue.enter(() -> {
                        clock.move(Duration.ofMillis(20));
                        throw new IllegalArgumentException("faulty");
                    })
                    .orElseThrow();
            Throwable cause = assertThrows(ExecutionException.class, () -> faulty.get(1, TimeUnit.MINUTES))
                    .getCause();
            assertEquals("faulty", cause.getMessage());
            queue.enter(slow()).orElseThrow().get(1, TimeUnit.MINUTES);
            Place next = queue.enter(closed()).orElseThrow();
            assertTrue(queue.hurry(next, Duration.ofDays(1)));
            gate.countDown();
            next.get(1, TimeUnit.MINUTES);
        }
    }

    /** Keeps a thread busy until the gate opens. */
    private void begun(AdviceQueue queue) throws InterruptedException {
        assertTrue(queue.enter(closed()).isPresent());
        begun.acquire();
    }

    /** Ends when the gate opens. */
    private Callable<Advice> closed() {
        return () -> {
            begun.release();
            gate.await();
            return nothing();
        };
    }

    /** Takes 20 ms. */
    private Callable<Advice> slow() {
        return () -> {
            clock.move(Duration.ofMillis(20));
            return nothing();
        };
    }

    private static Advice nothing() {
        return null;
    }
}
