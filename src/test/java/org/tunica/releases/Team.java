package org.tunica.releases;

import io.cucumber.java.After;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tunica.casefile.FaultyInput;

/** The team of one scenario, and what was refused to it. Public because the steps are. */
public final class Team {
    private final Path folder;
    private final Office office;
    private Optional<FaultyInput> refused = Optional.empty();

    /** A team with an empty office. */
    public Team() {
        try {
            this.folder = Files.createTempDirectory("office");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        this.office = Office.staffed(folder.resolve("data").toString());
    }

    Office office() {
        return office;
    }

    String place() {
        return folder.resolve("data").toString();
    }

    /** Tries something that may be refused. */
    void tries(Runnable act) {
        try {
            act.run();
            refused = Optional.empty();
        } catch (FaultyInput e) {
            refused = Optional.of(e);
        }
    }

    Optional<FaultyInput> refused() {
        return refused;
    }

    /** Closes the office and removes it. */
    @After
    public void close() throws IOException {
        office.close();
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> all = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : all) {
                Files.delete(file);
            }
        }
    }
}
