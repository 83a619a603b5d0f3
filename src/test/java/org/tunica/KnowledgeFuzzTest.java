package org.tunica;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.lifecycle.AfterContainer;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;

/** Whatever is done to a file of knowledge or a change record, it loads or ends in faults with their places. */
class KnowledgeFuzzTest {
    private static final Map<String, String> SHIPPED = Bundle.shipped().texts();
    private static final List<String> PATHS =
            SHIPPED.keySet().stream().filter(path -> path.endsWith(".yaml")).toList();
    private static final List<String> TEXTS = PATHS.stream().map(SHIPPED::get).toList();
    private static final long LONGEST_NANOS = 10_000_000_000L;
    private static final HeapWatch HEAP = new HeapWatch();
    private static int accepted;
    private static int refused;

    /** The file alone: everything else is missing, so it is always refused, but first it is read. */
    @Property(tries = 500, seed = "20260201", shrinking = ShrinkingMode.OFF)
    void alone(@ForAll long seed) {
        mangledAlone(seed);
    }

    @Property(tries = 25, seed = "20260202", shrinking = ShrinkingMode.OFF)
    void amongTheOthers(@ForAll long seed) {
        mangledAmongTheOthers(seed);
    }

    @Property(tries = 30_000, seed = "20260211", shrinking = ShrinkingMode.OFF)
    @Tag("deep")
    void aloneDeep(@ForAll long seed) {
        mangledAlone(seed);
    }

    @Property(tries = 1_500, seed = "20260212", shrinking = ShrinkingMode.OFF)
    @Tag("deep")
    void amongTheOthersDeep(@ForAll long seed) {
        mangledAmongTheOthers(seed);
    }

    /** A fuzz that only ever reads, or only ever refuses, would show nothing. */
    @AfterContainer
    static void bothOutcomesWereSeen_andNothingWasKept() {
        HEAP.nothingWasKept();
        assertTrue(accepted > 0, "accepted " + accepted);
        assertTrue(refused > 50, "refused " + refused);
    }

    private static void mangledAlone(long seed) {
        Random random = new Random(seed);
        int at = random.nextInt(PATHS.size());
        String text =
                random.nextInt(5) == 0 ? Mangled.ofNothing(TEXTS, random) : Mangled.of(TEXTS.get(at), TEXTS, random);
        load(Map.of(PATHS.get(at), text), false);
    }

    private static void mangledAmongTheOthers(long seed) {
        Random random = new Random(seed);
        int at = random.nextInt(PATHS.size());
        Map<String, String> texts = new TreeMap<>(SHIPPED);
        texts.put(PATHS.get(at), Mangled.of(TEXTS.get(at), TEXTS, random));
        load(texts, true);
    }

    private static void load(Map<String, String> texts, boolean whole) {
        long start = cpuNanos();
        try {
            Bundle bundle = Bundle.of(texts);
            if (whole) {
                Tunica.of(bundle);
            } else {
                Knowledge.of(bundle);
            }
            accepted++;
        } catch (FaultyInput e) {
            refused++;
            assertFalse(e.faults().isEmpty());
            e.faults().forEach(KnowledgeFuzzTest::hasAPlace);
        }
        assertTrue(cpuNanos() - start < LONGEST_NANOS, "too long");
    }

    private static void hasAPlace(Fault fault) {
        assertTrue(fault.place().matches("(knowledge/|rules/|change \\d{4}|knowledge$)[^\\n]*"), fault::toString);
        assertFalse(fault.says().isBlank(), fault::toString);
    }

    private static long cpuNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
