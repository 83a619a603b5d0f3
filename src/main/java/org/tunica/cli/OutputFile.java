package org.tunica.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** A file a user named, to be written whole or not at all. */
final class OutputFile {
    private static final String HALF_WRITTEN = ".part";

    private final String name;
    private final Path path;
    private final Naming naming;
    private final FileAttribute<?>[] rights;

    /** What goes into a file, bit by bit. */
    interface Filling {
        void to(OutputStream out) throws IOException;
    }

    /** How a file that is written takes its name. */
    private interface Naming {
        void name(Path half, Path path) throws IOException;
    }

    private OutputFile(String name, Path path, Naming naming, FileAttribute<?>... rights) {
        this.name = name;
        this.path = path;
        this.naming = naming;
        this.rights = rights;
    }

    /**
     * A file that takes the place of an older one.
     *
     * @throws FaultyInput when it is no path, or a folder
     */
    static OutputFile replacing(String name) {
        Path path = path(name);
        if (Files.isDirectory(path)) {
            throw fault(name, "is a folder");
        }
        return new OutputFile(
                name, path, (half, taken) -> Files.move(half, taken, StandardCopyOption.REPLACE_EXISTING));
    }

    /**
     * A file that is never written over another.
     *
     * @throws FaultyInput when it is no path, something of that name is there, or its folder is not
     */
    static OutputFile fresh(String name) {
        Path path = path(name);
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            throw fault(name, "exists already and is left as it is");
        }
        if (path.getParent() == null || !Files.isDirectory(path.getParent())) {
            throw fault(name, "there is no such folder");
        }
        return new OutputFile(name, path, OutputFile::nameUnlessTaken);
    }

    private static Path path(String name) {
        try {
            return Path.of(name).toAbsolutePath();
        } catch (InvalidPathException e) {
            throw fault(name, "is not a file name here: " + e.getReason());
        }
    }

    /** The same file, which only its owner will be able to read. */
    OutputFile ownerOnly() {
        boolean known = path.getFileSystem().supportedFileAttributeViews().contains("posix");
        return known
                ? new OutputFile(
                        name,
                        path,
                        naming,
                        PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")))
                : this;
    }

    /**
     * Writes beside the file first and then gives it its name, so that nobody sees half of it and a failure leaves what
     * was there.
     *
     * @throws FaultyInput when it cannot be written, or a fresh name was taken meanwhile
     */
    void write(byte[] bytes) {
        write(out -> out.write(bytes));
    }

    /** The same of what is too long to be held at once. */
    void write(Filling filling) {
        Path half = path.resolveSibling(path.getFileName() + HALF_WRITTEN);
        try {
            Files.createFile(half, rights);
        } catch (FileAlreadyExistsException e) {
            throw fault(half.toString(), "is left from an earlier attempt; look at it and remove it");
        } catch (IOException e) {
            throw fault(name, why(e));
        }
        fillAndName(half, filling);
    }

    private void fillAndName(Path half, Filling filling) {
        try {
            try {
                fill(half, filling);
                naming.name(half, path);
            } finally {
                Files.deleteIfExists(half);
            }
        } catch (IOException e) {
            throw fault(name, why(e));
        }
    }

    private static void fill(Path half, Filling filling) throws IOException {
        try (FileChannel file = FileChannel.open(half, StandardOpenOption.WRITE)) {
            BufferedOutputStream out = new BufferedOutputStream(Channels.newOutputStream(file));
            filling.to(out);
            out.flush();
            file.force(true); // the name must never reach the disk before what it names
        }
    }

    /** A link is the one way to name a file that fails when the name is taken, also at the same moment. */
    private static void nameUnlessTaken(Path half, Path path) throws IOException {
        try {
            Files.createLink(path, half);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (UnsupportedOperationException | IOException e) {
            Files.move(half, path); // no links on this disk: refuses a taken name too
        }
    }

    private static String why(IOException e) {
        if (e instanceof FileAlreadyExistsException) {
            return "exists already and is left as it is";
        }
        if (e instanceof NoSuchFileException) {
            return "there is no such folder";
        }
        return e instanceof AccessDeniedException ? "may not be written" : "cannot be written: " + e.getMessage();
    }

    private static FaultyInput fault(String name, String says) {
        return new FaultyInput("output", List.of(new Fault(name, says)));
    }
}
