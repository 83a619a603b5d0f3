package org.tunica.releases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A staffed office in a folder of its own, gone afterwards. */
final class Watchroom implements AutoCloseable {
    final Path folder;
    final Office office;

    Watchroom() {
        try {
            this.folder = Files.createTempDirectory("watchroom");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        this.office = Office.staffed(folder.resolve("data").toString());
    }

    @Override
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
