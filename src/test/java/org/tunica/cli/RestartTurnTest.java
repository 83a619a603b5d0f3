package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.store.Engine;
import org.tunica.store.Store;
import org.tunica.web.MovableClock;

/** Servers over one real database start anew one after the other, and none waits for ever. */
class RestartTurnTest {
    @TempDir
    private static Path folder;

    private final MovableClock clock = new MovableClock();

    @Test
    void oneGoes_andTheNextWhenItAnswersAgain() throws Exception {
        String place = Engine.POSTGRESQL.freshPlace(folder);
        try (Store here = Store.open(place, clock);
                Store there = Store.open(place, clock)) {
            RestartTurn one = new RestartTurn(here.parts(), clock);
            RestartTurn other = new RestartTurn(there.parts(), clock);
            other.over();
            assertTrue(one.comes());
            assertFalse(other.comes());
            other.over();
            assertFalse(other.comes(), "whoever has no turn gives none back");
            one.over();
            assertTrue(other.comes());
            assertFalse(one.comes());
        }
    }

    @Test
    void whoeverWaitedLong_goesAnyway() throws Exception {
        String place = Engine.POSTGRESQL.freshPlace(folder);
        try (Store here = Store.open(place, clock);
                Store there = Store.open(place, Clock.systemUTC())) {
            assertTrue(new RestartTurn(there.parts(), clock).comes());
            RestartTurn other = new RestartTurn(here.parts(), clock);
            assertFalse(other.comes());
            clock.move(RestartTurn.LONGEST_WAIT.minus(Duration.ofSeconds(1)));
            assertFalse(other.comes());
            clock.move(Duration.ofSeconds(1));
            assertTrue(other.comes());
        }
    }

    @Test
    void whatWasNoLongerWanted_isWaitedForAnew() throws Exception {
        String place = Engine.POSTGRESQL.freshPlace(folder);
        try (Store here = Store.open(place, clock);
                Store there = Store.open(place, clock)) {
            RestartTurn one = new RestartTurn(here.parts(), clock);
            RestartTurn other = new RestartTurn(there.parts(), clock);
            assertTrue(one.comes());
            assertFalse(other.comes());
            other.forget();
            clock.move(RestartTurn.LONGEST_WAIT);
            assertFalse(other.comes(), "the wait of another day does not count");
        }
    }

    @Test
    void alone_nobodyWaits() {
        assertTrue(new RestartTurn(Optional.empty(), clock).comes());
    }
}
