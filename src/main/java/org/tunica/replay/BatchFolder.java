package org.tunica.replay;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/**
 * Finished batches as files of one folder, each with its digest on a line of its own. A file is written beside its name and
 * renamed, so it is whole or not there; one that does not keep its digest counts as not there.
 */
final class BatchFolder implements BatchStore {
    private static final int READS_AT_MOST = 64_000_000;

    private final Path folder;
    private final Function<BatchResult, String> toLine;

    /**
     * A folder, which is made if it is not there.
     *
     * @param toLine a result as JSON on one line
     * @throws FaultyInput when nothing can be written there
     */
    BatchFolder(Path folder, Function<BatchResult, String> toLine) {
        this.folder = folder;
        this.toLine = toLine;
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    @Override
    public Optional<BatchResult> find(int batch, String cases) {
        Path file = file(batch);
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > READS_AT_MOST) {
                return Optional.empty();
            }
            return read(Files.readString(file))
                    .filter(result -> result.batch() == batch && result.cases().equals(cases));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<BatchResult> read(String text) {
        List<String> lines = text.lines().toList();
        if (lines.size() != 2 || !lines.get(1).equals(Digest.of(lines.get(0)))) {
            return Optional.empty();
        }
        try {
            return Optional.of(BatchReader.read(lines.get(0).getBytes(StandardCharsets.UTF_8)));
        } catch (FaultyInput e) {
            return Optional.empty();
        }
    }

    @Override
    public void keep(BatchResult result) {
        String line = toLine.apply(result);
        Path part = folder.resolve(file(result.batch()).getFileName() + ".part");
        try {
            Files.writeString(part, line + "\n" + Digest.of(line) + "\n");
            force(part);
            Files.move(part, file(result.batch()), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    private static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    private Path file(int batch) {
        return folder.resolve("batch-" + batch + ".json");
    }

    private FaultyInput unwritable(IOException e) {
        return new FaultyInput("replay", List.of(new Fault(folder.toString(), "cannot be written: " + e.getMessage())));
    }
}
