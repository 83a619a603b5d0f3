package org.tunica.couch;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.pages.AdviceView;
import org.tunica.plan.AdviceSoFar;
import org.tunica.store.KeptCase;

/**
 * The advice for versions of kept cases, at hand for whoever looks again: a version never changes, nor do the rules while the
 * server runs. It is computed behind the page, once, however many ask: first what takes no computing of heat, then all of it.
 * A page waits a moment for it and then shows as much as there is.
 */
final class AdviceShelf implements AutoCloseable {
    private static final int MOST = 64;
    private static final int THREADS = 2;

    /** How long a page waits; together with the writing of the page it stays under a second. */
    private static final Duration A_MOMENT = Duration.ofMillis(500);

    private final Tunica tunica;
    private final Map<String, Asked> lately = new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Asked> eldest) {
            return size() > MOST;
        }
    };
    private final ExecutorService behind = Executors.newFixedThreadPool(THREADS, work -> {
        Thread thread = new Thread(work, "page-advice");
        thread.setDaemon(true);
        return thread;
    });

    AdviceShelf(Tunica tunica) {
        this.tunica = tunica;
    }

    /**
     * A version and what is known of its advice.
     *
     * @param soFar whole, or as much as there is; empty while there is nothing
     */
    record Shown(CaseFile caseFile, Optional<AdviceSoFar> soFar, AdviceView view) {
        boolean isWhole() {
            return soFar.filter(AdviceSoFar::isWhole).isPresent();
        }
    }

    /** A version somebody looked at. */
    private record Asked(CaseFile caseFile, CompletableFuture<Shown> first, CompletableFuture<Shown> whole) {}

    /** As much as there is within a moment. */
    Shown soon(KeptCase kept) {
        Asked asked = asked(kept);
        try {
            return asked.whole().get(A_MOMENT.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            CaseFile caseFile = asked.caseFile();
            return asked.first().isDone()
                    ? asked.first().join()
                    : new Shown(caseFile, Optional.empty(), AdviceView.awaiting(caseFile, tunica.release()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the server is closing", e);
        } catch (ExecutionException e) {
            throw failed(kept, e.getCause());
        }
    }

    /** The whole advice, however long it takes. */
    Shown whole(KeptCase kept) {
        try {
            return asked(kept).whole().join();
        } catch (CompletionException e) {
            throw failed(kept, e.getCause());
        }
    }

    /** What failed once may do better when it is asked for again. */
    private RuntimeException failed(KeptCase kept, Throwable cause) {
        synchronized (lately) {
            lately.remove(key(kept));
        }
        return new IllegalStateException("an advice could not be computed", cause);
    }

    private Asked asked(KeptCase kept) {
        synchronized (lately) {
            Asked before = lately.get(key(kept));
            if (before != null) {
                return before;
            }
        }
        CaseFile caseFile = tunica.readCase("case", kept.json().getBytes(StandardCharsets.UTF_8));
        synchronized (lately) {
            return lately.computeIfAbsent(key(kept), version -> started(caseFile));
        }
    }

    private Asked started(CaseFile caseFile) {
        CompletableFuture<Shown> first =
                CompletableFuture.supplyAsync(() -> shown(caseFile, tunica.adviseSoFar(caseFile)), behind);
        CompletableFuture<Shown> whole =
                first.thenApplyAsync(soFar -> shown(caseFile, AdviceSoFar.whole(tunica.advise(caseFile))), behind);
        return new Asked(caseFile, first, whole);
    }

    private Shown shown(CaseFile caseFile, AdviceSoFar soFar) {
        return new Shown(caseFile, Optional.of(soFar), AdviceView.of(caseFile, soFar.advice(), tunica.knowledge()));
    }

    private static String key(KeptCase kept) {
        return kept.caseRef() + "/" + kept.version();
    }

    @Override
    public void close() {
        behind.shutdownNow();
    }
}
