package org.tunica.cluster;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * Sends many documents to an index, some batches at once. Who hands over more than the engine takes waits; what the engine turns
 * away for the moment is sent again, later each time; what it turns away for good ends the load. A document sent twice is there
 * once, for its id is its own.
 */
final class BulkLoad implements AutoCloseable {
    private static final int BATCH_BYTES = 4_000_000;
    private static final int BATCH_DOCUMENTS = 2_000;
    private static final int AT_ONCE = 2;
    private static final int ATTEMPTS = 12;
    private static final long FIRST_WAIT_MS = 100;
    private static final long LONGEST_WAIT_MS = 30_000;
    private static final int TOO_MANY = 429;
    private static final int BROKEN = 500;
    private static final int REFUSED = 400;

    private final Engine engine;
    private final String index;
    private final Semaphore free = new Semaphore(AT_ONCE);
    private final ExecutorService senders = Executors.newFixedThreadPool(AT_ONCE);
    private final AtomicReference<@Nullable RuntimeException> failed = new AtomicReference<>();
    private List<Line> batch = new ArrayList<>();
    private int batchBytes;

    /** A document with its id. */
    private record Line(String id, String json) {
        void into(StringBuilder lines) {
            lines.append("{\"index\":{\"_id\":\"")
                    .append(id)
                    .append("\"}}\n")
                    .append(json)
                    .append('\n');
        }
    }

    BulkLoad(Engine engine, String index) {
        this.engine = engine;
        this.index = index;
    }

    /**
     * Hands over one document; waits while too much is on its way.
     *
     * @throws EngineUnavailable when an earlier batch could not be loaded
     */
    void add(String id, String json) {
        batch.add(new Line(id, json));
        batchBytes += Layout.bytes(json);
        if (batchBytes >= BATCH_BYTES || batch.size() >= BATCH_DOCUMENTS) {
            send();
        }
    }

    /** Sends what is left and waits until all of it is there. */
    void finish() {
        if (!batch.isEmpty()) {
            send();
        }
        free.acquireUninterruptibly(AT_ONCE);
        free.release(AT_ONCE);
        throwIfFailed();
    }

    private void send() {
        throwIfFailed();
        List<Line> full = batch;
        batch = new ArrayList<>();
        batchBytes = 0;
        free.acquireUninterruptibly();
        CompletableFuture.runAsync(() -> load(full), senders).whenComplete((nothing, why) -> {
            if (why != null) {
                Throwable cause = why instanceof CompletionException ? why.getCause() : why;
                failed.compareAndSet(
                        null, cause instanceof RuntimeException known ? known : new IllegalStateException(cause));
            }
            free.release();
        });
    }

    private void throwIfFailed() {
        RuntimeException why = failed.get();
        if (why != null) {
            throw why;
        }
    }

    private void load(List<Line> lines) {
        List<Line> left = lines;
        String says = "";
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            Outcome outcome = once(left);
            left = outcome.again();
            says = outcome.says();
            if (left.isEmpty()) {
                return;
            }
            pause(Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS << attempt));
        }
        throw new EngineUnavailable("The search engine turned " + left.size() + " segments away " + ATTEMPTS
                + " times, at last with: " + says);
    }

    /** What has to be sent again, and why. */
    private record Outcome(List<Line> again, String says) {}

    private Outcome once(List<Line> lines) {
        StringBuilder body = new StringBuilder();
        lines.forEach(line -> line.into(body));
        Engine.Answer answer;
        try {
            answer = engine.lines("/" + index + "/_bulk", body.toString());
        } catch (EngineUnavailable e) {
            return new Outcome(lines, String.valueOf(e.getMessage()));
        }
        if (answer.overloaded()) {
            return new Outcome(lines, answer.reason());
        }
        if (answer.status() >= REFUSED) {
            throw new EngineUnavailable("The search engine refuses the load: " + answer.reason());
        }
        return turnedAway(lines, answer.body());
    }

    private static Outcome turnedAway(List<Line> lines, JsonNode body) {
        List<Line> again = new ArrayList<>();
        String says = "";
        for (int i = 0; i < lines.size() && body.path("errors").asBoolean(false); i++) {
            JsonNode item = body.path("items").path(i).path("index");
            int status = item.path("status").asInt(0);
            if (status == TOO_MANY || status >= BROKEN) {
                again.add(lines.get(i));
                says = item.path("error").path("reason").asString("");
            } else if (status >= REFUSED) {
                throw new EngineUnavailable(
                        "The search engine refuses segment " + lines.get(i).id() + ": "
                                + item.path("error").path("reason").asString(""));
            }
        }
        return new Outcome(again, says);
    }

    private static void pause(long ms) {
        try {
            TimeUnit.MILLISECONDS.sleep(ms);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new EngineUnavailable("The load was interrupted", e);
        }
    }

    @Override
    public void close() {
        senders.shutdownNow();
    }
}
