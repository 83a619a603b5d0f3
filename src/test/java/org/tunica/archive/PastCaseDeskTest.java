package org.tunica.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.PastCase;
import org.tunica.store.Actor;
import org.tunica.store.Engine;
import org.tunica.store.OutOfDate;
import org.tunica.store.Page;
import org.tunica.store.PastCaseState;
import org.tunica.store.Store;

/** What a desk remembers is what the shelf says, whoever else works at the same shelf meanwhile. */
class PastCaseDeskTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final Actor WREN = new Actor("wren");
    private static final int ACTS = 70;

    @TempDir
    private static Path folder;

    @ParameterizedTest
    @EnumSource
    void whatIsRemembered_isWhatAFreshDeskFinds(Engine engine) throws Exception {
        try (Store store = Store.open(engine.freshPlace(folder), Clock.systemUTC())) {
            PastCaseDesk old = new PastCaseDesk(TUNICA, store);
            Random random = new Random(11);
            // few people that are many times alike, or no crowd is ever large enough
            List<PastCase> people =
                    TUNICA.pastCases().inventedLibrary(4).cases(3).toList();
            int released = 0;
            for (int act = 0; act < ACTS; act++) {
                PastCase one = people.get(random.nextInt(people.size()));
                String id = String.format("p-%024x", act);
                switch (random.nextInt(6)) {
                    case 0, 1 -> {
                        String line = TUNICA.pastCases().toLine(one).replace(one.id(), id);
                        store.pastCases().bringIn(WREN, id, line);
                    }
                    case 2, 3 -> wait(store, one, id);
                    case 4 -> released += release(new PastCaseDesk(TUNICA, store));
                    default -> withdraw(store, random);
                }
                PastCaseDesk.WaitingList fresh = new PastCaseDesk(TUNICA, store).waiting();
                assertEquals(fresh, old.waiting());
            }
            assertTrue(released > 0, "the crowds were never large enough: the test says nothing");
            assertEquals(List.of(), store.audit().verify().faults());
        }
    }

    /** One that nobody can read any more stands in no crowd and is told by name, waiting or released. */
    @Test
    void whatCannotBeRead_isToldByName() throws Exception {
        try (Store store = Store.open(Engine.SQLITE.freshPlace(folder), Clock.systemUTC())) {
            PastCaseDesk desk = new PastCaseDesk(TUNICA, store);
            store.pastCases().offer(WREN, "p-1", "{\"format\":\"tunica-waiting/0\"}");
            store.pastCases().bringIn(WREN, "p-2", "{\"format\":\"tunica-past/0\"}");
            assertEquals(List.of("p-1"), desk.waiting().unreadable());
            Released released = desk.released();
            released.to(one -> assertFalse(true, one::id));
            assertEquals(List.of("p-2"), released.leftOut());
        }
    }

    @Test
    void twoWhoReleaseTheSame_doItOnce() throws Exception {
        try (Store store = Store.open(Engine.SQLITE.freshPlace(folder), Clock.systemUTC())) {
            PastCase one = TUNICA.pastCases().inventedLibrary(9).at(3);
            for (int i = 0; i < 5; i++) {
                wait(store, one, "p-" + "0".repeat(23) + i);
            }
            PastCaseDesk desk = new PastCaseDesk(TUNICA, store);
            PastCaseDesk.WaitingList seen = desk.waiting();
            Set<String> digests =
                    seen.cases().stream().map(PastCaseDesk.Waiting::digest).collect(Collectors.toSet());
            assertEquals(5, desk.release(WREN, digests).size());
            assertThrows(FaultyInput.class, () -> desk.release(WREN, digests));
            assertThrows(
                    OutOfDate.class,
                    () -> store.pastCases().release(WREN, seen.cases().get(0).kept(), "{}"));
            assertEquals(
                    5,
                    store.pastCases().in(PastCaseState.RELEASED, Page.newest(9)).size());
        }
    }

    private static void wait(Store store, PastCase one, String id) {
        String line = TUNICA.pastCases()
                .toLine(one)
                .replace(one.id(), id)
                .replace("\"tunica-past/1\"", "\"tunica-waiting/1\"");
        store.pastCases().offer(WREN, id, line);
    }

    /** Releases whatever stands in a crowd. */
    private static int release(PastCaseDesk desk) {
        Set<String> digests = desk.waiting().cases().stream()
                .filter(one -> one.place().missing() == 0)
                .map(PastCaseDesk.Waiting::digest)
                .collect(Collectors.toSet());
        try {
            return desk.release(WREN, digests).size();
        } catch (FaultyInput heldBack) {
            // those that wait made the crowd, and not all of them were chosen
            return 0;
        }
    }

    private static void withdraw(Store store, Random random) {
        List<String> ids = store.pastCases().in(PastCaseState.RELEASED, Page.newest(Page.LONGEST)).stream()
                .map(one -> one.id())
                .toList();
        if (!ids.isEmpty()) {
            store.pastCases().withdraw(WREN, ids.get(random.nextInt(ids.size())));
        }
    }
}
