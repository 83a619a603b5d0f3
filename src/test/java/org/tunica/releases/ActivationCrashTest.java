package org.tunica.releases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.store.AuditHead;
import org.tunica.store.Engine;
import org.tunica.store.StoreUnavailable;

/** Whatever dies while a release is put in force, the one before is in force, whole, or the new one is. */
class ActivationCrashTest {
    private static final int MOST_LOOKS = 40;

    /** Every write of an activation, and the moment before it and after it. */
    private static final List<String> WRITES = List.of(
            "before insert on audit",
            "after insert on audit",
            "before update on audit_head",
            "after update on audit_head",
            "before insert on release_steps",
            "after insert on release_steps");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void aWriteThatFails_leavesTheReleaseBeforeInForce(Engine engine) throws SQLException {
        String place = engine.freshPlace(folder);
        try (Office office = ready(place)) {
            office.desk.activate(Office.BY, "1.1.0");
            office.hours(1);
            office.approved("1.2.0", Office.SMALL);
            for (String write : WRITES) {
                fail(engine, place, write);
                AuditHead before = office.store.audit().head();
                assertThrows(StoreUnavailable.class, () -> office.desk.activate(Office.BY, "1.2.0"), write);
                assertThrows(StoreUnavailable.class, () -> office.desk.rollBack(Office.BY, "bad"), write);
                mend(engine, place, write);
                assertEquals(before, office.store.audit().head(), write);
                assertEquals(Optional.of("1.1.0"), office.versionInForce(), write);
                assertEquals(List.of(), office.store.audit().verify().faults(), write);
            }
            office.desk.activate(Office.BY, "1.2.0");
            assertEquals(Optional.of("1.2.0"), office.versionInForce());
            office.desk.rollBack(Office.BY, "bad");
            assertEquals(Optional.of("1.1.0"), office.versionInForce());
        }
    }

    /** A process that dies for good at every look at the clock, the last of which is inside the transaction. */
    @Test
    void aProcessKilledAtEveryStep_leavesTheReleaseBeforeInForce(TestReporter reporter)
            throws IOException, InterruptedException {
        String place = folder.resolve("data").toString();
        ready(place).close();
        int deaths = 0;
        while (activateAndDieAt(place, deaths + 1)) {
            deaths++;
            assertTrue(deaths < MOST_LOOKS, "it never lived to the end");
            assertInForce(place, "1.0.0");
        }
        assertTrue(deaths >= 3, "it died only " + deaths + " times");
        assertInForce(place, "1.1.0");
        reporter.publishEntry("killed at steps", Integer.toString(deaths));
    }

    private static boolean activateAndDieAt(String place, int look) throws IOException, InterruptedException {
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Xmx128m",
                        "-cp",
                        classPath,
                        HaltedActivation.class.getName(),
                        place,
                        "1.1.0",
                        Integer.toString(look))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int code = process.waitFor();
        if (code == 0) {
            assertEquals("acknowledged", said.strip());
        } else {
            assertEquals(HaltedActivation.KILLED, code, said);
            assertEquals("", said, "it acknowledged what may not be there");
        }
        return code != 0;
    }

    private static void assertInForce(String place, String version) {
        try (Office office = new Office(place)) {
            office.hours(48);
            assertEquals(Optional.of(version), office.versionInForce());
            assertEquals(List.of(), office.store.audit().verify().faults());
            assertEquals(version, office.records.verified(version).manifest().version());
        }
    }

    /** One in force and one approved. */
    private static Office ready(String place) {
        Office office = Office.staffed(place);
        office.inForce("1.0.0", Office.SMALL);
        office.approved("1.1.0", Office.SMALL);
        return office;
    }

    private static void fail(Engine engine, String place, String write) throws SQLException {
        if (engine == Engine.SQLITE) {
            engine.behindItsBack(
                    place, "create trigger failing " + write + " begin select raise(abort, 'struck'); end");
        } else {
            engine.behindItsBack(
                    place,
                    "create or replace function struck() returns trigger as $$ begin raise exception 'struck';"
                            + " end $$ language plpgsql",
                    "create trigger failing " + write + " for each row execute function struck()");
        }
    }

    private static void mend(Engine engine, String place, String write) throws SQLException {
        String table = write.substring(write.lastIndexOf(' ') + 1);
        engine.behindItsBack(
                place, engine == Engine.SQLITE ? "drop trigger failing" : "drop trigger failing on " + table);
    }
}
