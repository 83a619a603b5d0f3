package org.tunica.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.tunica.casefile.FaultyInput;

/** A store of yesterday is brought up to date, one of tomorrow is left alone. */
class MigrationsTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void anOlderSchema_isBroughtUpToDateWithWhatIsInIt(Engine engine) throws SQLException {
        String place = engine.freshPlace(folder);
        try (Connections connections = Place.named(place).connect()) {
            Migrations.configured(connections.pool()).target("2").load().migrate();
            JdbcClient sql = JdbcClient.create(connections.pool());
            Pen pen = new Pen(connections, sql, new SteppingClock());
            new SqlCases(pen, new Shelf(place, Table.CASES, sql)).save(Filled.ANNA, "c", Cases.NONE, "{\"old\":1}");
        }
        try (Store store = Store.open(place, new SteppingClock())) {
            assertEquals("{\"old\":1}", store.cases().latest("c").orElseThrow().json());
            store.users().save(Filled.ANNA, User.fresh("anna", Set.of(), ""));
            Verification found = store.audit().verify();
            assertEquals(List.of(), found.faults());
            assertEquals(2, found.auditRows());
        }
    }

    @ParameterizedTest
    @EnumSource
    void aNewerSchema_isRefusedAndLeftAlone(Engine engine) throws SQLException, IOException {
        String place = engine.freshPlace(folder);
        Store.open(place, new SteppingClock()).close();
        Path later = Files.createDirectory(folder.resolve("later-" + engine));
        Files.writeString(later.resolve("V99__later.sql"), "create table later (id text);");
        try (Connections connections = Place.named(place).connect()) {
            Migrations.configured(connections.pool())
                    .locations("classpath:org/tunica/store", "filesystem:" + later)
                    .load()
                    .migrate();
        }
        FaultyInput fault = assertThrows(FaultyInput.class, () -> Store.open(place, new SteppingClock()));
        assertTrue(
                fault.getMessage()
                        .contains("was written by a newer program: its schema is 99, this program knows 10;"
                                + " nothing was changed"),
                fault.getMessage());
        engine.behindItsBack(place, "select * from later");
    }

    @ParameterizedTest
    @EnumSource
    void aSchemaThatSomebodyElseMade_isRefused(Engine engine) throws SQLException {
        String place = engine.freshPlace(folder);
        Store.open(place, new SteppingClock()).close();
        engine.behindItsBack(place, "update flyway_schema_history set checksum = 1 where version = '2'");
        FaultyInput fault = assertThrows(FaultyInput.class, () -> Store.open(place, new SteppingClock()));
        assertTrue(
                fault.getMessage().contains("its schema is not the one this program made: cases"), fault.getMessage());
    }

    @ParameterizedTest
    @EnumSource
    void aDatabaseOfSomethingElse_isRefusedAndLeftAlone(Engine engine) throws SQLException, IOException {
        String place = engine.freshPlace(folder);
        if (engine == Engine.SQLITE) {
            Files.createDirectories(Path.of(place));
        }
        engine.behindItsBack(place, "create table invoices (id text)");
        RuntimeException refused = assertThrows(RuntimeException.class, () -> Store.open(place, new SteppingClock()));
        assertTrue(refused.getMessage().contains("holds tables of something else"), refused.getMessage());
        engine.behindItsBack(place, "create table cases (id text)"); // would fail, had it been made
    }
}
