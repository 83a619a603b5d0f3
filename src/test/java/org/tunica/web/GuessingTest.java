package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.store.Act;
import org.tunica.store.AuditRow;
import org.tunica.store.Engine;
import org.tunica.store.Page;
import org.tunica.store.Role;

/** Somebody who guesses many passwords at the same time, on both databases. */
class GuessingTest {
    private static final int AT_ONCE = 16;

    @TempDir
    private Path folder;

    /** Whoever is let in was so before the lock; after it nobody is, however many are under way. */
    @ParameterizedTest
    @EnumSource(Engine.class)
    void guessesAtOnce_gainNothingOverGuessesInARow(Engine engine) throws Exception {
        try (Clinic clinic = Clinic.at(engine.freshPlace(folder), settings -> settings)) {
            clinic.user("rosa", Role.SPECIALIST);
            ExecutorService pool = Executors.newFixedThreadPool(AT_ONCE);
            List<Callable<Integer>> guesses = new ArrayList<>();
            for (int i = 0; i < AT_ONCE; i++) {
                guesses.add(() -> clinic.browser().signIn("rosa", "wrong").statusCode());
            }
            for (Future<Integer> guess : pool.invokeAll(guesses)) {
                assertEquals(302, guess.get());
            }
            pool.shutdown();
            assertTrue(clinic.store
                    .users()
                    .find("rosa")
                    .orElseThrow()
                    .lockedUntil()
                    .isPresent());
            Browser late = clinic.browser();
            late.signIn("rosa", Clinic.PASSWORD);
            assertEquals(401, late.get("/api/cases").statusCode());
            List<String> acts = clinic.store.audit().newest(Page.newest(100)).stream()
                    .map(AuditRow::act)
                    .toList();
            assertTrue(acts.contains(Act.SIGN_IN_FAILED.word()));
            assertEquals(0, acts.stream().filter(Act.SIGNED_IN.word()::equals).count());
            assertTrue(clinic.store.audit().verify().sound());
        }
    }
}
