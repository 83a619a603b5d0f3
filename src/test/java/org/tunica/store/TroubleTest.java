package org.tunica.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.casefile.FaultyInput;

/** Where a store cannot work it says why, in words for the person who can help, and nothing is half-written. */
class TroubleTest {
    @TempDir
    private Path folder;

    @Test
    void aFullDisk_isToldAndNothingAcknowledgedIsLost() throws SQLException {
        FolderPlace place = new FolderPlace(folder);
        Store.open(place, new SteppingClock()).close();
        HikariDataSource pool = Connections.pool(place.source(), 1, "pragma max_page_count = 120");
        try (Store store = Store.open(new Hindered(place, pool), new SteppingClock())) {
            int saved = 0;
            StoreUnavailable full = null;
            while (full == null) {
                try {
                    store.cases().save(Filled.ANNA, "c", saved, "x".repeat(10_000));
                    saved++;
                } catch (StoreUnavailable e) {
                    full = e;
                }
            }
            assertEquals(folder + ": the disk is full; nothing of the last write was kept", full.getMessage());
            assertTrue(saved > 3, "full from the start");
            assertEquals(saved, store.audit().head().number());

            // a person makes room; the connection that failed is in order, and a transaction is one again
            try (Connection connection = pool.getConnection();
                    Statement statement = connection.createStatement()) {
                statement.execute("pragma max_page_count = 100000");
            }
            long last = saved;
            assertThrows(
                    IllegalStateException.class,
                    () -> store.together(() -> {
                        store.cases().save(Filled.ANNA, "c", last, "{}");
                        throw new IllegalStateException("changed my mind");
                    }));
            assertEquals(saved, store.audit().head().number());
            assertEquals(
                    saved + 1, store.cases().save(Filled.ANNA, "c", saved, "{}").version());
            assertEquals(List.of(), store.audit().verify().faults());
        }
    }

    @Test
    void aReadOnlyStore_isToldWhenWritten() {
        FolderPlace place = new FolderPlace(folder);
        try (Store store = Store.open(place, new SteppingClock())) {
            store.cases().save(Filled.ANNA, "c", Cases.NONE, "{}");
        }
        try (Store store = Store.open(
                new Hindered(place, Connections.pool(place.source(), 1, "pragma query_only = true")),
                new SteppingClock())) {
            StoreUnavailable refused =
                    assertThrows(StoreUnavailable.class, () -> store.cases().save(Filled.ANNA, "c", 1, "{}"));
            assertTrue(
                    refused.getMessage().contains("may not be written: the folder, the file or the disk is read-only"));
            assertEquals("{}", store.cases().latest("c").orElseThrow().json());
        }
    }

    /** Nothing is read-only for the superuser, who builds in some places: there this test says nothing. */
    @Test
    void aReadOnlyFolder_isToldAtOnce() throws IOException {
        Path closed = Files.createDirectory(folder.resolve("closed"));
        assumeTrue(closed.toFile().setWritable(false) && !Files.isWritable(closed), "nothing is read-only here");
        StoreUnavailable refused =
                assertThrows(StoreUnavailable.class, () -> Store.open(closed.toString(), new SteppingClock()));
        assertTrue(refused.getMessage().contains("may not be written"), refused.getMessage());
        closed.toFile().setWritable(true);
    }

    @Test
    void aPlaceThatIsNone_isTold() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "text");
        Map<String, String> faults = Map.of(
                file.toString(),
                "is no folder that data could be kept in",
                file + "/below",
                "cannot be used",
                folder + "/what?mode=memory",
                "is no name for a folder",
                " ",
                "is no name for a folder",
                "jdbc:mysql://host/x?password=secret",
                "jdbc:mysql://host/x: is no URL of a database known here",
                "jdbc:postgresql://user:secret@:no/x",
                "is no URL that the PostgreSQL driver understands");
        faults.forEach((place, says) -> {
            RuntimeException told =
                    assertThrows(RuntimeException.class, () -> Store.open(place, new SteppingClock()), place);
            assertTrue(told.getMessage().contains(says), () -> place + ": " + told.getMessage());
            assertFalse(told.getMessage().contains("secret"), told::getMessage);
        });
    }

    @Test
    void aSlipOfThePen_makesNoEmptyStore() {
        Path slip = folder.resolve("dta");
        FaultyInput fault = assertThrows(FaultyInput.class, () -> Store.existing(slip.toString(), new SteppingClock()));
        assertTrue(fault.getMessage().contains("holds no data of this program"));
        assertFalse(Files.exists(slip));
    }

    @Test
    void aFileThatIsNoStore_isToldAndLeft() throws IOException {
        String text = "This is no database, and it is longer than the head of one. ".repeat(20);
        Files.writeString(folder.resolve(FolderPlace.FILE), text);
        StoreUnavailable refused =
                assertThrows(StoreUnavailable.class, () -> Store.open(folder.toString(), new SteppingClock()));
        assertTrue(refused.getMessage().contains("is damaged or no store of this program"), refused.getMessage());
        assertEquals(text, Files.readString(folder.resolve(FolderPlace.FILE)));
    }

    @Test
    void aDatabaseThatIsNotReached_isTold() throws IOException, SQLException {
        int port;
        try (ServerSocket socket = new ServerSocket(0)) {
            port = socket.getLocalPort();
        }
        assertTold(
                "jdbc:postgresql://localhost:" + port + "/x?user=u&password=secret",
                "the database is not reached; see address and whether it runs");
        String there = Engine.POSTGRESQL.freshPlace(folder);
        assertTold(there.replaceAll("/store\\d+", "/nowhere"), "there is no database of that name");
        assertTold(there.replace("user=postgres", "user=eve"), "does not let this user in");
    }

    private static void assertTold(String place, String says) {
        StoreUnavailable told = assertThrows(StoreUnavailable.class, () -> Store.open(place, new SteppingClock()));
        assertTrue(told.getMessage().contains(says), told::getMessage);
        assertFalse(told.getMessage().contains("secret"), told::getMessage);
    }

    @Test
    void nobodyElseMayReadWhatIsKept() throws IOException {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Path data = folder.resolve("data");
        try (Store store = Store.open(data.toString(), new SteppingClock())) {
            store.cases().save(Filled.ANNA, "c", Cases.NONE, "{}");
            assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(data)));
            for (String file : List.of("", "-wal", "-shm")) {
                Path path = data.resolve(FolderPlace.FILE + file);
                assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(path)), file);
            }
        }
    }

    /** A folder whose disk is small or closed, as far as SQLite is concerned. */
    private record Hindered(FolderPlace place, HikariDataSource pool) implements Place {
        @Override
        public String shown() {
            return place.shown();
        }

        @Override
        public boolean exists() {
            return place.exists();
        }

        @Override
        public Connections connect() {
            return new Connections(shown(), pool);
        }
    }
}
