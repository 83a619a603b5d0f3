package org.tunica.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** A file to be written whole or not at all, and never over another. */
final class NewFile {
    private static final String HALF_WRITTEN = ".part";

    private final String name;
    private final Path path;

    private NewFile(String name, Path path) {
        this.name = name;
        this.path = path;
    }

    /**
     * The file a user named.
     *
     * @throws FaultyInput when something of that name is there or its folder is not
     */
    static NewFile at(String name) {
        try {
            Path path = Path.of(name).toAbsolutePath();
            if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
                throw fault(name, "exists already and is left as it is");
            }
            if (path.getParent() == null || !Files.isDirectory(path.getParent())) {
                throw fault(name, "there is no such folder");
            }
            return new NewFile(name, path);
        } catch (InvalidPathException e) {
            throw fault(name, "cannot be a file: " + e.getMessage());
        }
    }

    /**
     * Writes the text beside the file first and then gives it its name, so that nobody sees half of it.
     *
     * @throws FaultyInput when it cannot be written or something of that name has come up meanwhile
     */
    void write(String text) {
        Path half = path.resolveSibling(path.getFileName() + HALF_WRITTEN);
        try {
            Files.writeString(half, text, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            throw fault(half.toString(), "is left from an earlier attempt; look at it and remove it");
        } catch (IOException e) {
            throw fault(name, "cannot be written: " + e.getMessage());
        }
        name(half);
    }

    private void name(Path half) {
        try {
            try {
                Files.createLink(path, half); // the one way to name a file that fails when the name is taken
            } catch (UnsupportedOperationException e) {
                Files.move(half, path); // no links here: refuses a taken name too
            } finally {
                Files.deleteIfExists(half);
            }
        } catch (FileAlreadyExistsException e) {
            throw fault(name, "exists already and is left as it is");
        } catch (IOException e) {
            throw fault(name, "cannot be written: " + e.getMessage());
        }
    }

    private static FaultyInput fault(String name, String says) {
        return new FaultyInput("output", List.of(new Fault(name, says)));
    }
}
