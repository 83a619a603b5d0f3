package org.tunica.cli;

import java.io.Console;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import picocli.CommandLine.Option;

/** Where the passphrase of a key comes from: a file, or else the keyboard, unseen. It is never an argument others could see. */
final class Passphrase {
    @Option(
            names = "--passphrase-file",
            paramLabel = "FILE",
            description = "The file whose first line is the passphrase (default: it is asked for).")
    private Optional<String> file = Optional.empty();

    /** @throws FaultyInput when there is none */
    char[] read() {
        if (file.isPresent()) {
            return firstLine(file.get());
        }
        Console console = System.console();
        char[] typed = console == null ? new char[0] : console.readPassword("Passphrase: ");
        if (typed == null || typed.length == 0) {
            throw fault("passphrase", "was not given; use --passphrase-file where there is no keyboard");
        }
        return typed;
    }

    private static char[] firstLine(String name) {
        try {
            List<String> lines = Files.readAllLines(Path.of(name));
            return (lines.isEmpty() ? "" : lines.get(0)).toCharArray();
        } catch (InvalidPathException | IOException e) {
            throw fault(name, "cannot be read: " + e.getMessage());
        }
    }

    private static FaultyInput fault(String place, String says) {
        return new FaultyInput("input", List.of(new Fault(place, says)));
    }
}
