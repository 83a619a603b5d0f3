package org.tunica.pastcases;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/**
 * The anonymous cases of one base that nobody has released yet, {@code waiting.jsonl} in its folder. Lines stand in the
 * order of their random ids, so that their order tells nothing.
 */
public final class WaitingRoom {
    /** The name of the file in the folder of a base. */
    public static final String FILE = "waiting.jsonl";

    private static final String HALF_WRITTEN = ".part";

    private final Path file;

    /** The waiting cases of the base in a folder. */
    public WaitingRoom(Path folder) {
        this.file = folder.resolve(FILE);
    }

    /**
     * One waiting case as it is kept.
     *
     * @param text exactly what is kept and would be released
     */
    public record Line(String text) {
        /** A digest of exactly these bytes; who gives it back has seen them. */
        public String digest() {
            try {
                MessageDigest sha = MessageDigest.getInstance("SHA-256");
                return "sha256:" + HexFormat.of().formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException("every Java runtime has SHA-256", e);
            }
        }
    }

    /**
     * All that wait.
     *
     * @throws FaultyInput when the file cannot be read
     */
    public List<Line> lines() {
        if (!Files.exists(file)) {
            return List.of();
        }
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                    .filter(text -> !text.isBlank())
                    .map(Line::new)
                    .toList();
        } catch (IOException e) {
            throw fault("cannot be read: " + e.getClass().getSimpleName());
        }
    }

    /** Lets one more wait. */
    public void add(String line) {
        List<Line> all = new ArrayList<>(lines());
        all.add(new Line(line));
        write(all);
    }

    /** Lets another line wait in place of one. */
    public void replace(Line old, String line) {
        List<Line> all = new ArrayList<>(lines());
        all.remove(old);
        all.add(new Line(line));
        write(all);
    }

    /** Takes out what was released, or changed, by its digests. */
    public void remove(Set<String> digests) {
        write(lines().stream().filter(line -> !digests.contains(line.digest())).toList());
    }

    /** Writes beside the file first; the half-written file also keeps a second writer out. */
    private void write(List<Line> lines) {
        Path half = file.resolveSibling(FILE + HALF_WRITTEN);
        try {
            Files.createDirectories(file.getParent());
            Files.createFile(half);
        } catch (FileAlreadyExistsException e) {
            throw fault("somebody else is writing it, or an earlier attempt left " + FILE + HALF_WRITTEN);
        } catch (IOException e) {
            throw fault("cannot be written: " + e.getClass().getSimpleName());
        }
        try {
            try {
                Files.write(half, lines.stream().map(Line::text).sorted().toList(), StandardCharsets.UTF_8);
                Files.move(half, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(half);
            }
        } catch (IOException e) {
            throw fault("cannot be written: " + e.getClass().getSimpleName());
        }
    }

    private static FaultyInput fault(String says) {
        return new FaultyInput("cases", List.of(new Fault(FILE, says)));
    }
}
