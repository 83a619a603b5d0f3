package org.tunica.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.JsonText;

/** Reads the file a user named, never more of it than a case may be long. */
final class InputFile {
    private InputFile() {}

    /**
     * The bytes of a file, or of standard input for {@code -}; one byte more than allowed tells that it is too long.
     *
     * @throws FaultyInput when it cannot be read
     */
    static byte[] read(String file) {
        return read(file, JsonText.LARGEST_BYTES);
    }

    /**
     * The same of what another system wrote about a patient, which may be longer.
     *
     * @throws FaultyInput when it cannot be read
     */
    static byte[] readRecord(String file) {
        return read(file, JsonText.LARGEST_RECORD_BYTES);
    }

    private static byte[] read(String file, int largestBytes) {
        try (InputStream in = file.equals("-") ? System.in : Files.newInputStream(Path.of(file))) {
            return in.readNBytes(largestBytes + 1);
        } catch (NoSuchFileException e) {
            throw fault(file, "there is no such file");
        } catch (AccessDeniedException e) {
            throw fault(file, "may not be read");
        } catch (InvalidPathException | IOException e) {
            throw fault(file, "cannot be read: " + e.getMessage());
        }
    }

    private static FaultyInput fault(String file, String says) {
        return new FaultyInput("input", List.of(new Fault(file, says)));
    }
}
