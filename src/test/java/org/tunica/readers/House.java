package org.tunica.readers;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Comparator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tunica.releases.FirstRelease;
import org.tunica.store.Engine;
import org.tunica.store.Role;
import org.tunica.web.Clinic;

/** One server of an invented clinic over one PostgreSQL database, for every scenario of the readers. */
final class House {
    private static final House OPEN = new House();

    private final Path beside;
    private final Clinic clinic;

    @Nullable
    private FirstRelease releases;

    private House() {
        try {
            this.beside = Files.createTempDirectory("house");
            this.clinic = Clinic.at(Engine.POSTGRESQL.freshPlace(beside), beside);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        clinic.user("wren", Role.SPECIALIST);
        clinic.user("robin", Role.MEETING_MEMBER);
        clinic.user("anna", Role.RULE_AUTHOR);
        clinic.user("rosa", Role.SPECIALIST);
        clinic.user("clara", Role.CLINICAL_LEAD);
        clinic.user("stefan", Role.SAFETY_OFFICER);
        Runtime.getRuntime().addShutdownHook(new Thread(this::close, "house-closes"));
    }

    static Clinic clinic() {
        return OPEN.clinic;
    }

    /** Release 1.0.0 in force and 1.1.0 approved, made when the first scenario asks for them. */
    static synchronized FirstRelease releases() {
        if (OPEN.releases == null) {
            OPEN.releases = FirstRelease.inForce(OPEN.clinic.store, OPEN.clinic.clock);
            OPEN.clinic.clock.move(Duration.ofHours(1));
            OPEN.releases.approve("1.1.0");
        }
        return OPEN.releases;
    }

    private void close() {
        clinic.close();
        try (Stream<Path> files = Files.walk(beside)) {
            for (Path path : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
