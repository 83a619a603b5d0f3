package org.tunica.couch;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.physics.SegmentWindow;

/** Maps of settings computed lately, in memory alone; who asks for one that is being computed waits for the same. */
final class WindowMemory {
    private static final int MOST_REMEMBERED = 24;

    private final Tunica tunica;
    private final Map<Key, FutureTask<SegmentWindow>> windows = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, FutureTask<SegmentWindow>> eldest) {
            return size() > MOST_REMEMBERED;
        }
    };

    WindowMemory(Tunica tunica) {
        this.tunica = tunica;
    }

    /** What a window is of; a case read from a store holds no name. */
    private record Key(CaseFile caseFile, String segment, String technique) {}

    /** A window that takes no computing. */
    Optional<SegmentWindow> known(CaseFile caseFile, String segment, String technique) {
        synchronized (windows) {
            return Optional.ofNullable(windows.get(new Key(caseFile, segment, technique)))
                    .filter(FutureTask::isDone)
                    .map(WindowMemory::await);
        }
    }

    /** A window, computed now unless it is known. */
    SegmentWindow of(CaseFile caseFile, String segment, String technique) {
        Key key = new Key(caseFile, segment, technique);
        FutureTask<SegmentWindow> task;
        synchronized (windows) {
            task = windows.computeIfAbsent(
                    key, asked -> new FutureTask<>(() -> tunica.heat().heatWindow(caseFile, segment, technique)));
        }
        task.run();
        try {
            return await(task);
        } catch (RuntimeException e) {
            synchronized (windows) {
                windows.remove(key, task);
            }
            throw e;
        }
    }

    private static SegmentWindow await(FutureTask<SegmentWindow> task) {
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while a window was computed", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
        }
    }
}
