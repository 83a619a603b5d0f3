package org.tunica.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.tunica.casefile.FieldReader;

/** Files with secrets, which settings name so that they need not hold them. */
final class SecretFile {
    private SecretFile() {}

    /** Notes a fault when there is no such file that can be read. */
    static void check(FieldReader reader, String field, String file) {
        try {
            if (!file.isEmpty() && !Files.isReadable(Path.of(file))) {
                reader.fault(field, "there is no file " + file + " that can be read");
            }
        } catch (InvalidPathException e) {
            reader.fault(field, "is no name of a file: " + e.getReason());
        }
    }

    /** The first line of a file. */
    static String firstLine(String file) {
        try (var lines = Files.lines(Path.of(file))) {
            return lines.findFirst().orElse("").strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
