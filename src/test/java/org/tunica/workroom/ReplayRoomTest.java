package org.tunica.workroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.Replays;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.governance.ReleaseFiles;
import org.tunica.knowledge.Bundle;
import org.tunica.pastcases.CaseProgress;
import org.tunica.releases.Engines;
import org.tunica.releases.Program;
import org.tunica.releases.ReleaseRecords;
import org.tunica.replay.ReplayRequest;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.Engine;
import org.tunica.store.NewChangeStep;
import org.tunica.store.Page;
import org.tunica.store.Store;

/** Replays behind the scenes. */
class ReplayRoomTest {
    private static final Actor ANNA = new Actor("anna");
    private static final ReplayRoom.Sides SAME = new ReplayRoom.Sides(Bundle.shipped(), Bundle.shipped());
    private static final ReplayRequest.Invented FEW = new ReplayRequest.Invented(5, 2);
    private static final ReplayRequest.Invented MANY = new ReplayRequest.Invented(1, 100_000);

    @TempDir
    private Path folder;

    @Test
    void oneRunsAtATime_andEndsWithTheRoom() {
        Clock clock = Clock.fixed(Instant.parse("2026-03-02T08:00:00Z"), ZoneOffset.UTC);
        try (Store store = Store.open(folder.toString(), clock)) {
            ReplayRoom room = room(store, clock);
            try (room) {
                room.begin(ANNA, "0091", Tunica.shipped(), SAME, MANY);
                assertEquals("change 0091", room.running(SAME).orElseThrow().of());
                assertEquals(
                        "replay-begun",
                        store.audit().newest(Page.newest(1)).get(0).act());
                FaultyInput refused =
                        assertThrows(FaultyInput.class, () -> room.begin(ANNA, "0092", Tunica.shipped(), SAME, MANY));
                assertTrue(refused.getMessage().contains("change 0091 is being replayed, begun by anna"));
            }
            assertEquals(Optional.empty(), room.running(), "what was closed runs no more");
            assertEquals(Optional.empty(), room.finished(SAME), "half a replay is none");
            assertTrue(Files.isDirectory(folder.resolve("replays").resolve("work")));
        }
    }

    /** Two servers over one database: whatever one is asked, both see, and either brings it to its end. */
    @Test
    void overADatabase_aReplayIsOfAllServers_andOfThemOneResult() throws Exception {
        Clock clock = Clock.systemUTC();
        String place = Engine.POSTGRESQL.freshPlace(folder);
        Bundle draft = slightArteries();
        ReplayRoom.Sides sides = new ReplayRoom.Sides(Bundle.shipped(), draft);
        try (Store one = Store.open(place, clock);
                Store other = Store.open(place, clock)) {
            handIn(one, draft);
            ReplayRoom there = room(other, clock);
            try (there) {
                try (ReplayRoom here = room(one, clock)) {
                    here.begin(ANNA, "0091", Tunica.shipped(), sides, FEW);
                    assertEquals(
                            "change 0091", there.running(sides).orElseThrow().of());
                    FaultyInput refused = assertThrows(
                            FaultyInput.class, () -> there.begin(ANNA, "0092", Tunica.shipped(), sides, FEW));
                    assertTrue(refused.getMessage().contains("change 0091 is being replayed, begun by anna"));
                }
                // whoever began it is gone
                for (int looks = 0; there.running().isPresent() && looks < 1_200; looks++) {
                    Thread.sleep(50);
                }
                assertEquals(List.of(), there.failure(sides));
                Replays replays = Tunica.shipped().against(Tunica.of(draft));
                ReplayRequest alone = new ReplayRequest(Optional.empty(), Optional.of(FEW), Optional.empty(), 1);
                assertEquals(
                        Optional.of(replays.toJson(replays.prepare(alone).run(CaseProgress.NONE))),
                        there.finished(sides));
            }
        }
    }

    private static ReplayRoom room(Store store, Clock clock) {
        return ReplayRoom.of(
                store, new Engines(new ReleaseRecords(store), clock, Program.running()), new Reviews(), clock);
    }

    private static Bundle slightArteries() {
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        texts.computeIfPresent(
                "rules/3-cautions/arteries.rule",
                (path, text) -> text.replaceFirst("then caution strongly", "then caution slightly"));
        return Bundle.of(texts);
    }

    private static void handIn(Store store, Bundle draft) {
        store.changes()
                .step(
                        ANNA,
                        new NewChangeStep(
                                "0091",
                                Act.CHANGE_SUBMITTED,
                                "anna",
                                "",
                                draft.digest(),
                                "",
                                ReleaseFiles.of(draft.texts()).packed(),
                                ""));
    }
}
