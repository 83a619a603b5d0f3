package org.tunica.pastcases;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.function.Consumer;

/**
 * The next state of a file of lines, written beside the old one. The old one stays whole until the new one is safe on the
 * disk and takes its name in one step; whoever reads the old one meanwhile reads it to its end.
 */
final class NewBase implements AutoCloseable {
    private static final String PART = ".part";
    private static final int BUFFER_BYTES = 1 << 16;

    /** What is done one after the other; a program can die at each. */
    enum Stage {
        STARTED,
        COPIED,
        GROWN,
        SAFE,
        NAMED
    }

    private final Path file;
    private final Path part;
    private final Consumer<Stage> stages;
    private final MessageDigest digest = Digests.sha256();
    private final OutputStream out;

    NewBase(Path file, Consumer<Stage> stages) throws IOException {
        this.file = file;
        this.part = file.resolveSibling(file.getFileName() + PART);
        this.stages = stages;
        this.out = new BufferedOutputStream(Files.newOutputStream(part), BUFFER_BYTES);
    }

    void started() {
        stages.accept(Stage.STARTED);
    }

    void line(byte[] bytes) throws IOException {
        out.write(bytes);
        out.write('\n');
        digest.update(bytes);
        digest.update((byte) '\n');
    }

    void copied() {
        stages.accept(Stage.COPIED);
    }

    /** Gives the new state the name of the old one; returns the digest of its bytes. */
    String take() throws IOException {
        stages.accept(Stage.GROWN);
        out.close();
        force(part, StandardOpenOption.WRITE);
        stages.accept(Stage.SAFE);
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        stages.accept(Stage.NAMED);
        forceFolder();
        return HexFormat.of().formatHex(digest.digest());
    }

    private void forceFolder() {
        Path folder = file.toAbsolutePath().getParent();
        try {
            force(folder, StandardOpenOption.READ);
        } catch (IOException e) {
            // a system that cannot open a folder cannot be asked to write its names at once either
        }
    }

    private static void force(Path path, StandardOpenOption how) throws IOException {
        try (FileChannel channel = FileChannel.open(path, how)) {
            channel.force(true);
        }
    }

    /** Leaves nothing half-written behind. */
    @Override
    public void close() throws IOException {
        try {
            out.close();
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
