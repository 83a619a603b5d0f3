package org.tunica.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.StoreScope;
import org.tunica.store.Role;

/**
 * One server for all tests of pages that only add to it: it is opened by the first class of a process and closed with the
 * last, as each class is a run of its own to the tool that starts them. Its users are
 * called after their roles, one for each; cases of a test begin with a name of its own.
 */
final class SharedClinic implements BeforeAllCallback {
    static final String SPECIALIST = Role.SPECIALIST.word();
    static final String MEETING_MEMBER = Role.MEETING_MEMBER.word();

    private static Open open;

    /** Closed by the last who needs it. */
    private record Open(Clinic clinic, Path folder) implements AutoCloseable {
        static Open fresh() {
            try {
                Path folder = Files.createTempDirectory("clinic");
                Clinic clinic = Clinic.open(folder);
                for (Role role : Role.values()) {
                    clinic.user(role.word(), role);
                }
                return new Open(clinic, folder);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void close() throws IOException {
            clinic.close();
            try (var files = Files.walk(folder)) {
                for (Path path : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        open = context.getStore(StoreScope.LAUNCHER_SESSION, ExtensionContext.Namespace.GLOBAL)
                .getOrComputeIfAbsent(SharedClinic.class, any -> Open.fresh(), Open.class);
    }

    static Clinic clinic() {
        return open.clinic();
    }
}
