package org.tunica.frame;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Function;

/**
 * What takes long to compute, for whoever asks again: the last few answers, in memory alone. Who asks for one that is being
 * computed waits for the same. What fails is not remembered.
 */
public final class Remembered<K, V> {
    private final Function<K, V> computing;
    private final Map<K, FutureTask<V>> answers;

    /** @param most answers kept */
    public Remembered(int most, Function<K, V> computing) {
        this.computing = computing;
        this.answers = new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, FutureTask<V>> eldest) {
                return size() > most;
            }
        };
    }

    /** An answer that takes no computing. */
    public Optional<V> known(K asked) {
        FutureTask<V> task;
        synchronized (answers) {
            task = answers.get(asked);
        }
        return task != null && task.isDone() ? Optional.of(await(task)) : Optional.empty();
    }

    /** An answer, computed now unless it is known. */
    public V of(K asked) {
        FutureTask<V> task;
        synchronized (answers) {
            task = answers.computeIfAbsent(asked, key -> new FutureTask<>(() -> computing.apply(key)));
        }
        task.run();
        try {
            return await(task);
        } catch (RuntimeException e) {
            synchronized (answers) {
                answers.remove(asked, task);
            }
            throw e;
        }
    }

    private static <V> V await(FutureTask<V> task) {
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while an answer was computed", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
        }
    }
}
