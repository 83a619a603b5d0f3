package org.tunica.pastcases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** Keeps a second writer out of the folder of a base; the system lets go of it when the program dies. */
final class BaseLock implements AutoCloseable {
    private static final String LOCK = ".lock";

    private final Path folder;
    private final FileChannel channel;

    private BaseLock(Path folder, FileChannel channel) {
        this.folder = folder;
        this.channel = channel;
    }

    /**
     * The only writer of a folder, which is made if it is not there.
     *
     * @throws FaultyInput when another writer is at work, or nothing can be written there
     */
    static BaseLock of(Path folder) {
        try {
            Files.createDirectories(folder);
            FileChannel channel =
                    FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!locked(channel)) {
                channel.close();
                throw new FaultyInput(
                        "case base",
                        List.of(new Fault(folder.toString(), "is being written by another program; try again later")));
            }
            return new BaseLock(folder, channel);
        } catch (IOException e) {
            throw CaseLines.unwritable(folder.toString(), e);
        }
    }

    /** A file of the folder that may be written while this is held. */
    Path file(String name) {
        return folder.resolve(name);
    }

    private static boolean locked(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false; // another part of this very program
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
