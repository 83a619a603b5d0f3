package org.tunica.web;

import java.util.List;
import java.util.stream.Stream;

/** Asks two servers without pause whether they answer. */
final class Watchman implements AutoCloseable {
    private final Replica one;
    private final Replica other;
    private final Thread watching = new Thread(this::watch);
    private volatile boolean ends;
    private volatile boolean oneAway;
    private volatile int bothAway;

    Watchman(Replica one, Replica other) {
        this.one = one;
        this.other = other;
        watching.start();
    }

    private void watch() {
        while (!ends) {
            List<Boolean> answers = Stream.of(one, other).map(Watchman::answers).toList();
            oneAway |= answers.contains(false);
            // the first may have come back, and the second gone, between the two questions
            if (!answers.contains(true) && !answers(one)) {
                bothAway++;
            }
        }
    }

    private static boolean answers(Replica replica) {
        try {
            return replica.browser().get("/server/health/readiness").statusCode() == 200;
        } catch (Exception e) {
            return false;
        }
    }

    boolean sawOneAway() {
        return oneAway;
    }

    int sawBothAway() {
        return bothAway;
    }

    @Override
    public void close() {
        ends = true;
        try {
            watching.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
