package org.tunica.workroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.replay.ReplayRequest;
import org.tunica.store.Actor;
import org.tunica.store.Page;
import org.tunica.store.Store;

/** Replays behind the scenes. */
class ReplayRoomTest {
    private static final Actor ANNA = new Actor("anna");
    private static final ReplayRoom.Sides SAME = new ReplayRoom.Sides(Bundle.shipped(), Bundle.shipped());
    private static final ReplayRequest.Invented MANY = new ReplayRequest.Invented(1, 100_000);

    @TempDir
    private Path folder;

    @Test
    void oneRunsAtATime_andEndsWithTheRoom() {
        Clock clock = Clock.fixed(Instant.parse("2026-03-02T08:00:00Z"), ZoneOffset.UTC);
        try (Store store = Store.open(folder.toString(), clock)) {
            ReplayRoom room = new ReplayRoom(store, new Reviews(), clock);
            try (room) {
                room.begin(ANNA, "change 0091", Tunica.shipped(), SAME, MANY);
                assertEquals("change 0091", room.running(SAME).orElseThrow().of());
                assertEquals(
                        "replay-begun",
                        store.audit().newest(Page.newest(1)).get(0).act());
                FaultyInput refused = assertThrows(
                        FaultyInput.class, () -> room.begin(ANNA, "change 0092", Tunica.shipped(), SAME, MANY));
                assertTrue(refused.getMessage().contains("change 0091 is being replayed, begun by anna"));
            }
            assertEquals(Optional.empty(), room.running(), "what was closed runs no more");
            assertEquals(Optional.empty(), room.finished(SAME), "half a replay is none");
            assertTrue(Files.isDirectory(folder.resolve("replays").resolve("work")));
        }
    }
}
