package org.tunica.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** Writes the file a user named, whole or not at all. */
final class OutputFile {
    private static final String HALF_WRITTEN = ".part";

    private OutputFile() {}

    /**
     * The path of a file to write.
     *
     * @throws FaultyInput when it is no path, or a folder
     */
    static Path target(String file) {
        try {
            Path target = Path.of(file).toAbsolutePath();
            if (Files.isDirectory(target)) {
                throw fault(file, "is a folder");
            }
            return target;
        } catch (InvalidPathException e) {
            throw fault(file, "is not a file name here: " + e.getReason());
        }
    }

    /**
     * Writes beside the target first, so that a failure leaves the target as it was.
     *
     * @throws FaultyInput when it cannot be written
     */
    static void write(Path target, byte[] bytes) {
        Path beside = target.resolveSibling(target.getFileName() + HALF_WRITTEN);
        try {
            Files.write(beside, bytes, StandardOpenOption.CREATE_NEW);
            try {
                Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (FileAlreadyExistsException e) {
            throw fault(beside.toString(), "is left from an earlier attempt; look at it and remove it");
        } catch (NoSuchFileException e) {
            throw fault(target.toString(), "there is no such folder");
        } catch (AccessDeniedException e) {
            throw fault(target.toString(), "may not be written");
        } catch (IOException e) {
            throw fault(target.toString(), "cannot be written: " + e.getMessage());
        }
    }

    private static FaultyInput fault(String file, String says) {
        return new FaultyInput("output", List.of(new Fault(file, says)));
    }
}
