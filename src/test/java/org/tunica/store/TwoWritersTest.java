package org.tunica.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Several writers, also of two programs at once: nobody's change is lost, and the chain has no gap. */
class TwoWritersTest {
    private static final int WRITERS = 4;
    private static final int SAVES = 20;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void addingUpInOneCase_losesNoAddition(Engine engine) throws Exception {
        String place = engine.freshPlace(folder);
        try (Store one = Store.open(place, Clock.systemUTC());
                Store other = Store.open(place, Clock.systemUTC())) {
            one.cases().save(new Actor("start"), "sum", Cases.NONE, "0");
            List<Integer> late = inParallel(List.of(
                    () -> addUp(one, "w0"),
                    () -> addUp(other, "w1"),
                    () -> addUp(one, "w2"),
                    () -> addUp(other, "w3")));

            KeptCase last = one.cases().latest("sum").orElseThrow();
            assertEquals(WRITERS * SAVES, Integer.parseInt(last.json()));
            assertEquals(WRITERS * SAVES + 1, last.version());
            assertEquals(WRITERS * SAVES + 1, other.audit().head().number());
            Verification found = other.audit().verify();
            assertEquals(List.of(), found.faults());
            assertEquals(WRITERS * SAVES + 1, found.keptRows());
            assertTrue(
                    late.stream().mapToInt(Integer::intValue).sum() > 0, "nobody was ever too late: no race was run");
        }
    }

    /** Reads, adds one, saves; begins again when somebody was faster. */
    private static int addUp(Store store, String name) {
        int late = 0;
        int done = 0;
        while (done < SAVES) {
            KeptCase seen = store.cases().latest("sum").orElseThrow();
            try {
                int next = Integer.parseInt(seen.json()) + 1;
                store.cases().save(new Actor(name), "sum", seen.version(), Integer.toString(next));
                done++;
            } catch (OutOfDate e) {
                late++;
            }
        }
        return late;
    }

    @ParameterizedTest
    @EnumSource
    void checking_isNotDisturbedByWritersNorDisturbsThem(Engine engine) throws Exception {
        String place = engine.freshPlace(folder);
        try (Store one = Store.open(place, Clock.systemUTC());
                Store other = Store.open(place, Clock.systemUTC())) {
            List<Verification> found = new ArrayList<>();
            inParallel(List.of(() -> saveMany(one, "a"), () -> saveMany(other, "b"), () -> {
                IntStream.range(0, 10).forEach(i -> found.add(one.audit().verify()));
                return 0;
            }));
            found.forEach(verification -> assertEquals(List.of(), verification.faults()));
            found.forEach(verification ->
                    assertEquals(verification.auditRows(), verification.keptRows(), "two moments in one check"));
            assertEquals(2 * SAVES * 3, one.audit().verify().keptRows());
        }
    }

    /** It says so after a while instead of waiting for ever. */
    @ParameterizedTest
    @EnumSource
    void whoFindsAnotherProgramWriting_isTold(Engine engine) throws Exception {
        String place = engine.freshPlace(folder);
        try (Store one = Store.open(place, Clock.systemUTC());
                Store other = Store.open(place, Clock.systemUTC())) {
            StoreUnavailable told = one.together(() -> assertThrows(
                    StoreUnavailable.class, () -> other.cases().save(new Actor("late"), "c", Cases.NONE, "{}")));
            assertTrue(told.getMessage().contains("another program holds the data"), told.getMessage());
            // the connection that failed is in order: what it does next is one transaction again
            assertThrows(
                    IllegalStateException.class,
                    () -> other.together(() -> {
                        other.cases().save(new Actor("late"), "c", Cases.NONE, "{}");
                        throw new IllegalStateException("changed my mind");
                    }));
            assertEquals(AuditHead.NONE, one.audit().head());
            assertEquals(
                    1,
                    other.cases().save(new Actor("late"), "c", Cases.NONE, "{}").version());
            assertEquals(List.of(), one.audit().verify().faults());
        }
    }

    private static int saveMany(Store store, String ref) {
        for (int i = 0; i < SAVES * 3; i++) {
            store.cases().save(new Actor(ref), ref, i, "{}");
        }
        return 0;
    }

    private static List<Integer> inParallel(List<Callable<Integer>> works) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(works.size());
        try {
            List<Integer> results = new ArrayList<>();
            for (Future<Integer> result : threads.invokeAll(works)) {
                results.add(result.get());
            }
            return results;
        } finally {
            threads.shutdownNow();
        }
    }
}
