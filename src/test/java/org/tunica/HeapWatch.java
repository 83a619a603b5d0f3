package org.tunica;

import static org.junit.jupiter.api.Assertions.assertTrue;

/** Holds a long campaign to leaving the heap about as it found it. */
public final class HeapWatch {
    /** What classes, compiled code and caches of a first use may keep, in bytes; a leak grows with every try. */
    private static final long MOST_KEPT_BYTES = 40_000_000;

    private final long startBytes = usedBytes();

    /** Asserts that nothing was kept. */
    public void nothingWasKept() {
        long kept = usedBytes() - startBytes;
        assertTrue(kept < MOST_KEPT_BYTES, "kept " + kept + " bytes since " + startBytes);
    }

    private static long usedBytes() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
