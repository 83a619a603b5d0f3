package org.tunica.replay;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.physics.HeatMemory;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.HeatQuestion;
import org.tunica.physics.Physics;

/**
 * The folder of a replay: what the heat model answered, one file a set of constants, and the batches that are done. One
 * program works in it at a time. All of it can be deleted at any time and is then computed again.
 */
public final class WorkFolder implements AutoCloseable {
    private static final int SHORT = 16;
    private static final int AFTER_ALGORITHM = "sha256:".length();

    private final Path folder;
    private final FileChannel lock;
    private final List<HeatFile> open = new ArrayList<>();

    private WorkFolder(Path folder, FileChannel lock) {
        this.folder = folder;
        this.lock = lock;
    }

    /**
     * A folder, which is made if it is not there.
     *
     * @throws FaultyInput when another program works in it, or nothing can be written there
     */
    public static WorkFolder of(Path folder) {
        try {
            Files.createDirectories(folder);
            FileChannel lock =
                    FileChannel.open(folder.resolve(".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!locked(lock)) {
                lock.close();
                throw fault(folder, "another program works in it; try again later");
            }
            return new WorkFolder(folder, lock);
        } catch (IOException e) {
            throw fault(folder, "cannot be written: " + e.getMessage());
        }
    }

    private static boolean locked(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false; // another part of this very program
        }
    }

    private static FaultyInput fault(Path folder, String says) {
        return new FaultyInput("replay", List.of(new Fault(folder.toString(), says)));
    }

    /**
     * What the heat model answered under some constants. One kept answer is computed again: where the program has come to
     * compute otherwise, all are forgotten.
     *
     * @param model the model with these constants, without this memory
     */
    public HeatMemory heat(Physics model) {
        String constants = model.heatDigest();
        HeatFile file = HeatFile.open(folder.resolve("heat-" + brief(constants) + ".bin"), constants);
        open.add(file);
        Optional<HeatRecord.Answered> some = file.some();
        if (some.isPresent()
                && !answer(model, some.get().question())
                        .equals(Optional.of(some.get().outlook()))) {
            file.clear(constants);
        }
        return file;
    }

    /** A question that this program refuses was kept by another. */
    private static Optional<HeatOutlook> answer(Physics model, HeatQuestion question) {
        try {
            return Optional.of(model.heatOutlook(question));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    BatchStore batches(String replay, Function<BatchResult, String> toLine) {
        return new BatchFolder(folder.resolve("replay-" + brief(replay)), toLine);
    }

    private static String brief(String digest) {
        return digest.substring(AFTER_ALGORITHM, AFTER_ALGORITHM + SHORT);
    }

    @Override
    public void close() {
        open.forEach(HeatFile::close);
        try {
            lock.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
