package org.tunica.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tunica.casefile.FaultyInput;

/** What was backed up comes back whole, in either database, or nothing comes at all. */
class BackupTest {
    private static final int KINDS = DocumentKind.values().length;

    /** The row that tells of the backup itself. */
    private static final int LAST = Filled.ROWS + 1;

    @TempDir
    private Path folder;

    static Stream<Arguments> ways() {
        return Stream.of(Engine.values())
                .flatMap(from -> Stream.of(Engine.values()).map(to -> Arguments.of(from, to)));
    }

    @ParameterizedTest
    @MethodSource("ways")
    void aBackup_isRestoredIntoEither(Engine from, Engine to) throws SQLException, IOException {
        Path first = folder.resolve("first.zip");
        Path second = folder.resolve("second.zip");
        Backup made;
        try (Store store = open(from)) {
            Filled.fill(store);
            made = backUp(store, first);
        }
        try (Store store = open(to)) {
            Backup restored = store.restore(Filled.ANNA, first, Optional.of(made.head()));
            assertEquals(made, restored);
            assertEquals(LAST + (Filled.ROWS - 5), restored.rows());
            assertEquals(List.of(), store.audit().verify(made.head()).faults());
            assertEquals("restored", store.audit().newest(Page.newest(1)).get(0).act());
            assertEquals(
                    "{\"note\":\"é 🦵 '\\\"\"}",
                    store.cases().latest("foxglove-2").orElseThrow().json());
            assertEquals(
                    3, store.cases().save(Filled.ANNA, "larkspur-11", 2, "{}").version());
        }
        try (Store store = open(to)) {
            store.restore(Filled.ANNA, first, Optional.empty());
            backUp(store, second);
        }
        assertSameRows(new Archive(first), new Archive(second));
    }

    /** Byte for byte, but for the two rows that tell of the restoring and of the second backup. */
    private static void assertSameRows(Archive first, Archive second) {
        for (Table table : Table.KEPT) {
            String name = BackupEntry.nameOf(table);
            assertEquals(first.text(name), second.text(name));
            assertTrue(first.text(name).contains("\"seal\""), name);
        }
        assertTrue(second.text("audit.jsonl").startsWith(first.text("audit.jsonl")));
    }

    @ParameterizedTest
    @EnumSource
    void aBackupMadeWhileOthersWrite_isOfOneMoment(Engine engine) throws Exception {
        AtomicBoolean enough = new AtomicBoolean();
        List<Path> archives = new ArrayList<>();
        try (Store store = open(engine)) {
            Thread writer = new Thread(() -> {
                for (long seen = 0; !enough.get(); seen++) {
                    store.cases().save(Filled.ANNA, "c", seen, "x".repeat(5_000));
                }
            });
            writer.start();
            for (int i = 0; i < 3; i++) {
                archives.add(folder.resolve("running-" + i + ".zip"));
                backUp(store, archives.get(i));
            }
            enough.set(true);
            writer.join();
        }
        for (Path archive : archives) {
            try (Store store = open(Engine.SQLITE)) {
                Backup restored = store.restore(Filled.ANNA, archive, Optional.empty());
                assertEquals(
                        restored.head().number() + 1, store.audit().verify().auditRows());
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void aPlaceThatHoldsSomething_isLeftAsItIs(Engine engine) throws SQLException, IOException {
        Path archive = archive();
        try (Store store = open(engine)) {
            store.audit().note(Filled.ANNA, Act.VIEWED, new Subject("case", "c"));
            AuditHead before = store.audit().head();
            FaultyInput refused =
                    assertThrows(FaultyInput.class, () -> store.restore(Filled.ANNA, archive, Optional.empty()));
            assertTrue(refused.getMessage().contains("holds data already and is left as it is"));
            assertEquals(before, store.audit().head());
        }
    }

    @Test
    void aDamagedOrForgedBackup_isRefusedWholly() throws SQLException, IOException {
        Path archive = archive();
        Map<String, Hand> hands = Map.of(
                "cases.jsonl: has not the digest the manifest says",
                a -> a.change("cases.jsonl", "v\\\\\":1", "v\\\\\":7"),
                "case larkspur-11/1: is not as audit row 2 tells; somebody changed it",
                a -> a.change("cases.jsonl", "v\\\\\":1", "v\\\\\":7").signed("cases.jsonl"),
                "audit row 5: was changed",
                a -> a.change("audit.jsonl", "(\"number\":5,.*?)anna", "$1eve").signed("audit.jsonl"),
                "audit row " + LAST + ": is missing, and with it every row up to " + LAST,
                a -> a.change("audit.jsonl", "\\{\"number\":" + LAST + ".*\n", "")
                        .signed("audit.jsonl"),
                "documents.jsonl: holds " + (KINDS - 1) + " rows, the manifest says " + KINDS,
                a -> a.change("documents.jsonl", "\\{.*\n", ""),
                "users.jsonl: row 1 is not an object with name, version, state",
                a -> a.change("users.jsonl", "\"version\":2", "\"version\":\"2\"")
                        .signed("users.jsonl"),
                "archive: must hold [audit.jsonl, cards.jsonl",
                a -> a.without("feedback.jsonl"),
                "has schema 77, this program 10",
                a -> a.change("manifest.json", "\"schema\":\"10\"", "\"schema\":\"77\""),
                "$.format: must be tunica-backup/1",
                a -> a.change("manifest.json", "tunica-backup/1", "tunica-backup/2"),
                "holds no manifest.json",
                a -> a.without("manifest.json"));
        try (Store store = open(Engine.SQLITE)) {
            for (Map.Entry<String, Hand> hand : hands.entrySet()) {
                Path changed = folder.resolve("changed.zip");
                hand.getValue().on(new Archive(archive)).write(changed);
                FaultyInput refused = assertThrows(
                        FaultyInput.class, () -> store.restore(Filled.ANNA, changed, Optional.empty()), hand.getKey());
                assertTrue(
                        refused.getMessage().contains(hand.getKey()),
                        () -> hand.getKey() + " / " + refused.getMessage());
                assertEquals(AuditHead.NONE, store.audit().head());
                assertEquals(0, store.audit().verify().keptRows());
            }
            store.restore(Filled.ANNA, archive, Optional.empty());
        }
    }

    /** A change to an archive. */
    private interface Hand {
        Archive on(Archive archive);
    }

    @Test
    void aBackupOfAnotherTrailThanTheOneNoted_isRefused() throws SQLException, IOException {
        Path archive = archive();
        try (Store store = open(Engine.SQLITE)) {
            AuditHead noted = new AuditHead(LAST, "a".repeat(64));
            FaultyInput refused =
                    assertThrows(FaultyInput.class, () -> store.restore(Filled.ANNA, archive, Optional.of(noted)));
            assertTrue(refused.getMessage().contains("audit row " + LAST + ": is not the row noted elsewhere"));
            assertEquals(AuditHead.NONE, store.audit().head());
        }
    }

    /** It could not be restored, and one would learn so too late. */
    @Test
    void aStoreWhoseTrailDoesNotHold_isNotBackedUp() throws SQLException {
        String place = Engine.SQLITE.freshPlace(folder);
        try (Store store = Store.open(place, new SteppingClock())) {
            Filled.fill(store);
            Engine.SQLITE.behindItsBack(place, "update cases set body = '{}' where case_ref = 'foxglove-2'");
            Path archive = folder.resolve("tampered.zip");
            FaultyInput refused = assertThrows(FaultyInput.class, () -> backUp(store, archive));
            assertTrue(refused.getMessage().contains("case foxglove-2/1: is not as audit row 4 tells"));
            assertEquals(0, archive.toFile().length());
        }
    }

    /** Each length that a copy may have been cut to. */
    @Test
    void aBackupCutShort_isRefused() throws SQLException, IOException {
        byte[] whole = Files.readAllBytes(archive());
        try (Store store = open(Engine.SQLITE)) {
            for (int length = 0; length < whole.length; length += 97) {
                Path cut = Files.write(folder.resolve("cut.zip"), Arrays.copyOf(whole, length));
                assertThrows(
                        IOException.class, () -> store.restore(Filled.ANNA, cut, Optional.empty()), "length " + length);
            }
            assertEquals(AuditHead.NONE, store.audit().head());
        }
    }

    private Path archive() throws SQLException, IOException {
        Path archive = folder.resolve("archive.zip");
        try (Store store = open(Engine.SQLITE)) {
            Filled.fill(store);
            backUp(store, archive);
        }
        return archive;
    }

    private static Backup backUp(Store store, Path archive) throws IOException {
        try (OutputStream out = Files.newOutputStream(archive)) {
            return store.backUp(Filled.ANNA, out);
        }
    }

    private Store open(Engine engine) throws SQLException {
        return Store.open(engine.freshPlace(folder), new SteppingClock());
    }
}
