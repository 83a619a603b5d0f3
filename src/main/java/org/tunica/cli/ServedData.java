package org.tunica.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** The place a server keeps its data at; where nobody named one, a folder that is gone when the server is. */
final class ServedData implements AutoCloseable {
    private final String place;
    private final Optional<Path> passing;

    private ServedData(String place, Optional<Path> passing) {
        this.place = place;
        this.passing = passing;
    }

    static ServedData at(Optional<String> named) {
        return named.map(place -> new ServedData(place, Optional.empty())).orElseGet(ServedData::passing);
    }

    private static ServedData passing() {
        try {
            Path folder = Files.createTempDirectory("tunica-");
            return new ServedData(folder.toString(), Optional.of(folder));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String place() {
        return place;
    }

    /** Where the data are, and how long, in a sentence. */
    String says() {
        return passing.isPresent()
                ? "What is kept is gone when the server stops; --data FOLDER keeps it."
                : "What is kept is in " + DataPlace.shown(place) + ".";
    }

    @Override
    public void close() {
        passing.ifPresent(ServedData::remove);
    }

    private static void remove(Path folder) {
        try (Stream<Path> found = Files.walk(folder)) {
            for (Path path : found.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
