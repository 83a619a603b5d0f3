package org.tunica.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** Somebody with a database tool changes what is kept; the check finds it and names it. */
class TamperedTest {
    private static final int ROWS = Filled.ROWS;

    @TempDir
    private Path folder;

    private Engine engine = Engine.SQLITE;
    private String place = "";
    private @Nullable Store opened;

    @ParameterizedTest
    @EnumSource
    void untouched_itHolds(Engine engine) throws SQLException {
        Verification found = after(engine);
        assertEquals(List.of(), found.faults());
        assertEquals(ROWS, found.auditRows());
        assertEquals(ROWS, found.head().number());
        assertEquals(ROWS - 5, found.keptRows());
    }

    @ParameterizedTest
    @EnumSource
    void everyColumnOfARow_isGuarded(Engine engine) throws SQLException {
        begin(engine);
        for (Column column :
                Table.AUDIT.columns().subList(1, Table.AUDIT.columns().size())) {
            String name = column.name();
            String other = column.number() ? name + " + 1" : name + " || 'x'";
            String back = column.number() ? name + " - 1" : "substr(" + name + ", 1, length(" + name + ") - 1)";
            tamper("update audit set " + name + " = " + other + " where number = 5");
            assertFirst("audit row 5", name.equals("previous") ? "does not follow" : "was changed");
            tamper("update audit set " + name + " = " + back + " where number = 5");
            assertEquals(List.of(), verify().faults());
        }
    }

    @ParameterizedTest
    @EnumSource
    void aRowChangedWithItsHashComputedAnew_isFoundByTheNext(Engine engine) throws SQLException {
        begin(engine);
        AuditRow third = row(3);
        tamper("update audit set actor = 'eve', hash = '" + forged(third, "eve") + "' where number = 3");
        assertFirst("audit row 4", "does not follow on the row before");
    }

    @ParameterizedTest
    @EnumSource
    void aRemovedRow_isFound(Engine engine) throws SQLException {
        begin(engine);
        tamper("delete from audit where number = 3");
        assertFirst("audit row 3", "is missing; row 4 stands in its place");
        // closing the gap does not hide it; by way of negative numbers, because a key may not stand twice at any moment
        tamper(
                "update audit set number = -number where number > 3",
                "update audit set number = -number - 1 where number < 0");
        assertFirst("audit row 3", "does not follow");
    }

    @ParameterizedTest
    @EnumSource
    void anInsertedRow_isFound(Engine engine) throws SQLException {
        begin(engine);
        AuditRow second = row(2);
        AuditRow forged = AuditRow.after(
                new AuditHead(2, second.hash()), second.at(), Filled.ANNA, Act.VIEWED, second.subject(), "");
        tamper(
                "update audit set number = -number where number > 2",
                "update audit set number = -number + 1 where number < 0");
        tamper(insert(forged));
        assertFirst(
                "audit row 4",
                "does not follow on the row before: one of them was changed, moved, inserted or removed");
    }

    @ParameterizedTest
    @EnumSource
    void aRowAddedAtTheEnd_isFound(Engine engine) throws SQLException {
        begin(engine);
        AuditRow last = row(ROWS);
        tamper(insert(AuditRow.after(
                new AuditHead(ROWS, last.hash()), last.at(), Filled.ANNA, Act.VIEWED, last.subject(), "")));
        assertFirst("audit row " + (ROWS + 1), "was added without the head");
    }

    @ParameterizedTest
    @EnumSource
    void rowsInAnotherOrder_areFound(Engine engine) throws SQLException {
        begin(engine);
        tamper(
                "update audit set number = -7 where number = 7",
                "update audit set number = 7 where number = 8",
                "update audit set number = 8 where number = -7");
        assertFirst("audit row 7", "does not follow");
    }

    @ParameterizedTest
    @EnumSource
    void aTrailCutShort_isFound(Engine engine) throws SQLException {
        begin(engine);
        tamper("delete from audit where number > " + (ROWS - 1));
        assertFirst("audit row " + ROWS, "is missing, and with it every row up to " + ROWS);
    }

    @ParameterizedTest
    @EnumSource
    void aTrailCutShortTogetherWithItsHead_isFoundByAHeadNotedElsewhere(Engine engine) throws SQLException {
        begin(engine);
        AuditHead noted = AuditHead.of(verify().head().toString());
        AuditRow before = row(ROWS - 1);
        tamper(
                "delete from audit where number = " + ROWS,
                "update audit_head set number = " + (ROWS - 1) + ", hash = '" + before.hash() + "'");
        assertEquals(List.of(), verify().faults());
        assertEquals(
                List.of(new Fault("audit row " + ROWS, "was noted elsewhere and is missing; the trail ends before it")),
                store().audit().verify(noted).faults());
        store().audit().note(Filled.ANNA, Act.VIEWED, new Subject("case", "foxglove-2/1"));
        assertEquals(
                List.of(new Fault("audit row " + ROWS, "is not the row noted elsewhere; the trail was written anew")),
                store().audit().verify(noted).faults());
    }

    @ParameterizedTest
    @EnumSource
    void withoutItsHead_nothingIsWritten(Engine engine) throws SQLException {
        begin(engine);
        tamper("delete from audit_head");
        assertFirst("audit row 1", "was added without the head");
        assertThrows(FaultyInput.class, () -> store().cases().save(Filled.ANNA, "c", Cases.NONE, "{}"));
    }

    @ParameterizedTest
    @EnumSource
    void aHeadOfAnotherTrail_isFound(Engine engine) throws SQLException {
        assertTrue(after(engine, "update audit_head set hash = '" + "f".repeat(64) + "'")
                .faults()
                .get(0)
                .says()
                .contains("is not the last row by the head"));
    }

    @ParameterizedTest
    @EnumSource
    void whatIsKept_isGuardedInEveryColumn(Engine engine) throws SQLException {
        begin(engine);
        for (Table table : Table.KEPT) {
            for (Column column :
                    table.columns().subList(table.keys(), table.columns().size() - 1)) {
                // two numbers of documents refer to other rows; those of a case stand first and are not referred to
                if (column.name().equals("case_version")) {
                    continue;
                }
                String name = column.name();
                String one = " where audit_number = (select max(audit_number) from " + table.name() + ")";
                String other = column.number() ? name + " + 1" : name + " || 'x'";
                String back = column.number() ? name + " - 1" : "substr(" + name + ", 1, length(" + name + ") - 1)";
                tamper("update " + table.name() + " set " + name + " = " + other + one);
                List<Fault> faults = verify().faults();
                assertEquals(1, faults.size(), () -> table.name() + "." + name + ": " + faults);
                assertTrue(faults.get(0).place().startsWith(table.subject() + " "), faults::toString);
                assertTrue(faults.get(0).says().contains("somebody changed it"), faults::toString);
                tamper("update " + table.name() + " set " + name + " = " + back + one);
            }
        }
        assertEquals(List.of(), verify().faults());
    }

    @ParameterizedTest
    @EnumSource
    void somethingRemovedOrPutThere_isFound(Engine engine) throws SQLException {
        Verification found = after(
                engine,
                "delete from documents where kind = 'note'",
                "insert into cases values ('eve-1', 1, '{}', 'seal', 99)",
                "insert into user_keys values ('anna', 'k9', 'sign-release', 'forged', 'in-use', 'seal', " + ROWS
                        + ")");
        assertEquals(
                List.of(
                        "case eve-1/1: no row of the audit trail tells of it; somebody put it there",
                        "document larkspur-11/note/1: is not there as audit row 8 tells;"
                                + " somebody removed it or put an older state back",
                        "key anna/k9: no row of the audit trail tells of it; somebody put it there"),
                found.faults().stream().map(Fault::toString).toList());
    }

    /** A withdrawn role or password comes back with everything that once was true of it. */
    @ParameterizedTest
    @EnumSource
    void anOlderStatePutBack_isFound(Engine engine) throws SQLException {
        begin(engine);
        tamper("create table older as select * from users");
        User anna = store().users().find("anna").orElseThrow();
        store().users().save(Filled.ANNA, anna.in(UserState.LEFT));
        assertEquals(List.of(), verify().faults());
        tamper("update users set version = (select version from older), state = (select state from older),"
                + " seal = (select seal from older), audit_number = (select audit_number from older)");
        assertFirst("user anna", "is not there as audit row " + (ROWS + 1) + " tells");
    }

    private Verification after(Engine on, String... statements) throws SQLException {
        begin(on);
        tamper(statements);
        return verify();
    }

    private void begin(Engine on) throws SQLException {
        engine = on;
        place = engine.freshPlace(folder);
        opened = Store.open(place, new SteppingClock());
        Filled.fill(opened);
    }

    private Store store() {
        return Objects.requireNonNull(opened);
    }

    @AfterEach
    void close() {
        store().close();
    }

    private void tamper(String... statements) throws SQLException {
        engine.behindItsBack(place, statements);
    }

    private Verification verify() {
        return store().audit().verify();
    }

    private void assertFirst(String where, String says) {
        List<Fault> faults = verify().faults();
        assertTrue(!faults.isEmpty(), "nothing was found");
        assertEquals(where, faults.get(0).place(), faults::toString);
        assertTrue(faults.get(0).says().contains(says), faults::toString);
    }

    private AuditRow row(long number) {
        return store().audit().newest(new Page(number + 1, 1)).get(0);
    }

    private static String forged(AuditRow row, String actor) {
        List<String> values = new ArrayList<>(row.row().values());
        values.set(Table.AUDIT.place("actor"), actor);
        return AuditRow.hash(new Row(Table.AUDIT, values));
    }

    private static String insert(AuditRow row) {
        List<String> values = new ArrayList<>();
        for (int i = 0; i < row.row().values().size(); i++) {
            String value = row.row().values().get(i);
            values.add(Table.AUDIT.columns().get(i).number() ? value : "'" + value + "'");
        }
        return "insert into audit values (" + String.join(", ", values) + ")";
    }
}
