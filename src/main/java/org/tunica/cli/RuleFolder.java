package org.tunica.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;

/** A folder or archive a user named, with rules and knowledge in it and perhaps scenarios beside them. */
record RuleFolder(String name, Path path) {
    /** @throws FaultyInput when there is nothing of that name */
    static RuleFolder of(String name) {
        try {
            Path path = Path.of(name);
            if (Files.exists(path)) {
                return new RuleFolder(name, path);
            }
        } catch (InvalidPathException e) {
            // told below, like a name nothing has
        }
        throw new FaultyInput("input", List.of(new Fault(name, "there is no such folder or archive")));
    }

    /** @throws FaultyInput with every fault of its files */
    Bundle bundle() {
        try {
            return Bundle.at(path);
        } catch (UncheckedIOException e) {
            throw new FaultyInput(
                    "input",
                    List.of(new Fault(name, "cannot be read: " + e.getCause().getMessage())));
        }
    }

    /** The scenarios beside the rules, if they are there. */
    Optional<Path> features() {
        return Optional.of(path.resolve("features")).filter(Files::isDirectory);
    }

    /** A reading of files that names the folder when it fails. */
    interface Reading<T> {
        T read() throws IOException;
    }

    <T> T reading(Reading<T> reading) {
        try {
            return reading.read();
        } catch (IOException e) {
            throw new FaultyInput("input", List.of(new Fault(name, "cannot be read: " + e.getMessage())));
        }
    }
}
