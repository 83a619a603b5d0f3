package org.tunica.store;

import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.CoreErrorCode;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationState;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.flywaydb.core.api.output.ValidateOutput;

/** Brings a database to the schema of this program, or refuses to touch it. */
final class Migrations {
    private static final List<MigrationState> NEWER =
            List.of(MigrationState.FUTURE_SUCCESS, MigrationState.FUTURE_FAILED);

    private Migrations() {}

    /**
     * Applies what is missing.
     *
     * @return the version of the schema
     * @throws org.tunica.casefile.FaultyInput when a newer program made it, or it holds something else
     */
    static String run(String place, DataSource source) {
        Flyway flyway = configured(source).load();
        try {
            refuseNewer(place, flyway);
            refuseOther(place, flyway);
            flyway.migrate();
            return version(flyway.info().current());
        } catch (FlywayException e) {
            if (e.getErrorCode() == CoreErrorCode.NON_EMPTY_SCHEMA_WITHOUT_SCHEMA_HISTORY_TABLE) {
                throw Place.fault(place, "holds tables of something else; nothing was changed");
            }
            throw Trouble.of(place, e);
        }
    }

    /** The version of the schema as it is now. */
    static String version(String place, DataSource source) {
        try {
            return version(configured(source).load().info().current());
        } catch (FlywayException e) {
            throw Trouble.of(place, e);
        }
    }

    static FluentConfiguration configured(DataSource source) {
        return Flyway.configure()
                .dataSource(source)
                .locations("classpath:org/tunica/store")
                .ignoreMigrationPatterns("*:pending")
                .validateMigrationNaming(true)
                .cleanDisabled(true);
    }

    private static void refuseNewer(String place, Flyway flyway) {
        String known = "none";
        String newer = "";
        for (MigrationInfo info : flyway.info().all()) {
            if (NEWER.contains(info.getState())) {
                newer = version(info);
            } else {
                known = version(info);
            }
        }
        if (!newer.isEmpty()) {
            throw Place.fault(
                    place,
                    "was written by a newer program: its schema is " + newer + ", this program knows " + known
                            + "; nothing was changed. Use the newer program, or restore a backup made before");
        }
    }

    private static void refuseOther(String place, Flyway flyway) {
        List<ValidateOutput> wrong = flyway.validateWithResult().invalidMigrations;
        if (!wrong.isEmpty()) {
            throw Place.fault(
                    place,
                    "its schema is not the one this program made: " + wrong.get(0).description + " ("
                            + wrong.get(0)
                                    .errorDetails
                                    .errorMessage
                                    .lines()
                                    .findFirst()
                                    .orElse("") + ")");
        }
    }

    private static String version(MigrationInfo info) {
        MigrationVersion version = info.getVersion();
        return version == null ? "none" : version.getVersion();
    }
}
