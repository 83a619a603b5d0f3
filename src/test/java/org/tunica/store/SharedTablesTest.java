package org.tunica.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What several programs over one PostgreSQL share while they run. */
class SharedTablesTest {
    private static final Duration LONG = Duration.ofMinutes(10);
    private static final Duration OVER = Duration.ofSeconds(-1);

    @TempDir
    private Path folder;

    private final SteppingClock clock = new SteppingClock();
    private String place;
    private Store one;
    private Store other;

    @BeforeEach
    void open() throws SQLException {
        place = Engine.POSTGRESQL.freshPlace(folder);
        one = Store.open(place, clock);
        other = Store.open(place, clock);
    }

    @AfterEach
    void close() {
        one.close();
        other.close();
    }

    @Test
    void aFolder_sharesNothing() {
        try (Store alone = Store.open(folder.resolve("alone").toString(), clock)) {
            assertEquals(Optional.empty(), alone.sessions());
            assertEquals(Optional.empty(), alone.parts());
            assertEquals(Optional.empty(), alone.replays());
        }
    }

    @Test
    void ofManyThatShowOneToken_oneIsTheFirst() throws Exception {
        Instant until = clock.instant().plus(LONG);
        ExecutorService crowd = Executors.newFixedThreadPool(8);
        try {
            for (int token = 0; token < 20; token++) {
                String id = "token-" + token;
                List<Callable<Boolean>> shown = new ArrayList<>();
                for (int i = 0; i < 8; i++) {
                    SeenBook book = (i % 2 == 0 ? one : other).seenTokens();
                    shown.add(() -> book.firstTime("issuer", id, until));
                }
                int first = 0;
                for (Future<Boolean> answer : crowd.invokeAll(shown)) {
                    first += answer.get() ? 1 : 0;
                }
                assertEquals(1, first);
            }
        } finally {
            crowd.shutdownNow();
        }
        assertTrue(one.seenTokens().firstTime("another issuer", "token-0", until));
    }

    @Test
    void aTokenLongPastItsEnd_isForgotten() throws SQLException {
        SeenBook book = one.seenTokens();
        assertTrue(book.firstTime("issuer", "old", clock.instant().minus(Duration.ofHours(2))));
        assertTrue(book.firstTime("issuer", "lately", clock.instant().minus(Duration.ofMinutes(30))));
        Store.open(place, clock).seenTokens().firstTime("issuer", "new", clock.instant());
        assertTrue(book.firstTime("issuer", "old", clock.instant()), "forgotten, as it is refused by its time alone");
        assertFalse(book.firstTime("issuer", "lately", clock.instant()), "a clock elsewhere may be behind");
    }

    @Test
    void aPart_isTakenByOne_heldWhileSaidSo_andFreeWhenNot() {
        PartBook here = one.parts().orElseThrow();
        PartBook there = other.parts().orElseThrow();
        assertTrue(here.take("work", 1, "cases", "here", LONG));
        assertTrue(here.take("work", 1, "cases", "here", LONG), "its own");
        assertFalse(there.take("work", 1, "cases", "there", LONG));
        assertTrue(there.take("work", 1, "other cases", "there", LONG));
        assertTrue(there.take("work", 2, "cases", "there", OVER));
        assertTrue(here.take("work", 2, "cases", "here", OVER), "the time of the other had run out");
        here.hold("here", LONG);
        assertFalse(there.take("work", 2, "cases", "there", LONG));
        here.keep("work", 2, "cases", "done");
        there.keep("work", 2, "cases", "done again");
        assertEquals(Optional.of("done"), there.result("work", 2, "cases"));
        assertEquals(Optional.empty(), there.result("work", 1, "cases"));
        here.hold("here", OVER);
        assertFalse(there.take("work", 2, "cases", "there", LONG), "what is finished is nobody's");
        here.forget(Duration.ofHours(-1));
        assertEquals(Optional.empty(), there.result("work", 2, "cases"));
    }

    @Test
    void oneReplayRunsAtATime_andItsFirstEndCounts() {
        ReplayBook here = one.replays().orElseThrow();
        ReplayBook there = other.replays().orElseThrow();
        here.begin(Filled.ANNA, asked("a"));
        assertThrows(OutOfDate.class, () -> there.begin(Filled.ANNA, asked("b")));
        there.at("a", 40);
        here.at("a", 30);
        assertEquals(40, here.running().orElseThrow().doneCount());
        there.finished("a", "{}");
        here.failed("a", "too late");
        assertEquals("", here.one("a").orElseThrow().failure());
        assertEquals(Optional.empty(), here.running());
        there.begin(Filled.ANNA, asked("a"));
        assertEquals("", here.one("a").orElseThrow().result(), "begun again");
    }

    private SharedReplay asked(String id) {
        return SharedReplay.asked(id, "0091", "sha256:a", "sha256:b", 1, 10, "anna", clock.instant());
    }

    /** A session opens the door to whoever has its row; it must not travel with a backup. */
    @Test
    void whatIsShared_isInNoBackup() throws IOException, SQLException {
        one.seenTokens().firstTime("planted", "planted", clock.instant());
        one.parts().orElseThrow().take("planted", 1, "planted", "planted", LONG);
        one.replays().orElseThrow().begin(Filled.ANNA, asked("key"));
        one.replays().orElseThrow().finished("key", "planted");
        Engine.POSTGRESQL.behindItsBack(
                place,
                "insert into sessions values ('planted', 'planted', 1, 1, 1, 1, 'planted')",
                "insert into sessions_attributes values ('planted', 'planted', 'planted')");
        Path archive = folder.resolve("backup.zip");
        try (OutputStream out = Files.newOutputStream(archive)) {
            one.backUp(Filled.ANNA, out);
        }
        String all = texts(archive);
        assertTrue(all.contains("replay-begun"), "the trail tells who asked");
        assertFalse(all.contains("planted"), all);
    }

    private static String texts(Path archive) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                all.writeBytes(entry.getName().getBytes(StandardCharsets.UTF_8));
                zip.transferTo(all);
            }
        }
        return all.toString(StandardCharsets.UTF_8);
    }
}
