package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.store.Actor;
import org.tunica.store.AuditRow;
import org.tunica.store.Page;
import org.tunica.store.Store;

/** Checking, backing up and restoring by hand. */
class StoreCommandsTest extends AtTheCommandLine {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T08:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private String data = "";
    private String archive = "";

    @BeforeEach
    void keepACase() {
        data = folder.resolve("data").toString();
        archive = folder.resolve("backup.zip").toString();
        try (Store store = Store.open(data, CLOCK)) {
            store.cases().save(new Actor("anna"), "larkspur-11", 0, "{}");
        }
    }

    @Test
    void serveToANetworkInTheClear_isRefusedBeforeAnythingIsMade() {
        Path fresh = folder.resolve("fresh");
        run("serve", "--address", "0.0.0.0", "--data", fresh.toString());
        assertEquals(2, code);
        assertTrue(err.contains("would cross the network in the clear"), err);
        assertFalse(Files.exists(fresh));
    }

    @Test
    void verify_saysThatTheTrailHoldsAndItsHead() {
        run("verify", "--data", data);
        assertEquals(0, code, err);
        assertTrue(
                out.matches(
                        "The audit trail holds. Rows checked: 1; things kept that are as it tells: 1\\.\\s+Its head: 1:[0-9a-f]{64}\\s+"),
                out);
        run(
                "verify",
                "--data",
                data,
                "--noted",
                out.substring(out.lastIndexOf(' ')).strip());
        assertEquals(0, code, err);
    }

    @Test
    void verify_namesWhatIsWrong() {
        run("verify", "--data", data, "--noted", "1:" + "0".repeat(64));
        assertEquals(2, code);
        assertTrue(err.contains("audit row 1: is not the row noted elsewhere; the trail was written anew"), err);
        run("verify", "--data", data, "--noted", "yesterday's");
        assertEquals(2, code);
        assertTrue(err.contains("is no head of an audit trail"), err);
        run("verify", "--data", folder.resolve("dta").toString());
        assertEquals(2, code);
        assertTrue(err.contains("holds no data of this program"), err);
    }

    @Test
    void whoSitsAtTheKeyboard_isInTheTrail() {
        run("backup", "--data", data, "--to", archive, "--who", "o.lindqvist");
        assertEquals(0, code, err);
        run("backup", "--data", data, "--to", archive + "2", "--who", "o lindqvist");
        assertEquals(2, code);
        assertTrue(err.contains("--who: expected a name of letters"), err);
        run("backup", "--data", data, "--to", archive + "3");
        assertEquals(0, code, err);
        try (Store store = Store.open(data, CLOCK)) {
            assertEquals(
                    List.of("command-line", "command-line:o.lindqvist", "anna"),
                    store.audit().newest(Page.newest(10)).stream()
                            .map(AuditRow::actor)
                            .toList());
        }
    }

    @Test
    void aBackup_isRestoredElsewhereAndNeverOverData() throws IOException {
        run("backup", "--data", data, "--to", archive);
        assertEquals(0, code, err);
        assertTrue(out.contains("backup.zip: 3."), out);
        String head = out.substring(out.lastIndexOf(' ')).strip();
        byte[] bytes = Files.readAllBytes(Path.of(archive));

        run("backup", "--data", data, "--to", archive);
        assertEquals(2, code);
        assertTrue(err.contains("exists already and is left as it is"), err);

        String elsewhere = folder.resolve("elsewhere").toString();
        run("restore", "--data", elsewhere, "--from", archive, "--noted", head);
        assertEquals(0, code, err);
        assertTrue(out.startsWith("Rows restored: 3, as they stood at 20"), out);
        run("verify", "--data", elsewhere, "--noted", head);
        assertEquals(0, code, err);
        try (Store store = Store.open(elsewhere, CLOCK)) {
            assertTrue(store.cases().latest("larkspur-11").isPresent());
        }
        run("restore", "--data", elsewhere, "--from", archive);
        assertEquals(2, code);
        assertTrue(err.contains("holds data already"), err);
        assertEquals(bytes.length, Files.readAllBytes(Path.of(archive)).length);
    }

    @Test
    void restore_ofWhatIsNoBackup_isRefused() throws IOException {
        run("restore", "--data", folder.resolve("new").toString(), "--from", archive);
        assertEquals(2, code);
        assertTrue(err.contains("there is no such file"), err);
        Files.writeString(Path.of(archive), "no archive");
        run("restore", "--data", folder.resolve("new").toString(), "--from", archive);
        assertEquals(2, code);
        assertTrue(err.contains("cannot be read"), err);
    }

    @Test
    void aPlaceThatCannotBeUsed_isToldWithoutAStackTrace() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        run("restore", "--data", file + "/below", "--from", file.toString());
        assertEquals(1, code);
        assertTrue(err.contains("below: cannot be used"), err);
        assertFalse(err.contains("Exception"), err);
    }
}
