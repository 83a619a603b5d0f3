package org.tunica.similar;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.Lock;

/**
 * The folder in which indexes are kept, one folder each, named by its version: what is in it under that name is whole. An index
 * is built beside and given its name in one step, so that nobody sees half of one; the name is the version, so that an old one is
 * never taken for a new one. What a reader has open stays open.
 */
final class IndexFolder {
    private static final String VERSION = "v-";
    private static final String HALF_BUILT = ".half";
    private static final String LOCK = "building.lock";

    private final Path folder;

    IndexFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * The index of a version; it is built when it is lost, damaged or of another version. Where it cannot be kept, or another
     * process is building it, one is made in memory: slower to come by, and the same.
     *
     * @throws IOException when not even memory holds it
     */
    CaseIndex open(String version, CaseIndex.Filling filling) throws IOException {
        Path ready = folder.resolve(VERSION + version);
        Optional<CaseIndex> found = whole(ready);
        if (found.isPresent()) {
            return found.get();
        }
        try {
            Files.createDirectories(folder);
            try (Directory locks = FSDirectory.open(folder);
                    Lock lock = locks.obtainLock(LOCK)) {
                build(ready, filling);
                lock.ensureValid();
            }
            return CaseIndex.open(ready);
        } catch (IOException e) {
            return CaseIndex.inMemory(filling);
        }
    }

    private static Optional<CaseIndex> whole(Path ready) {
        if (!Files.isDirectory(ready)) {
            return Optional.empty();
        }
        try {
            return Optional.of(CaseIndex.open(ready));
        } catch (IOException damaged) {
            return Optional.empty();
        }
    }

    private void build(Path ready, CaseIndex.Filling filling) throws IOException {
        Path half = folder.resolve(ready.getFileName() + HALF_BUILT);
        remove(half);
        Files.createDirectories(half);
        try (Directory directory = FSDirectory.open(half)) {
            CaseIndex.fill(directory, filling);
        }
        remove(ready);
        Files.move(half, ready, StandardCopyOption.ATOMIC_MOVE);
        try (Stream<Path> others = Files.list(folder)) {
            for (Path other : others.filter(path -> !path.equals(ready)).toList()) {
                if (other.getFileName().toString().startsWith(VERSION)) {
                    remove(other);
                }
            }
        }
    }

    private static void remove(Path tree) throws IOException {
        if (!Files.exists(tree)) {
            return;
        }
        List<Path> deepestFirst;
        try (Stream<Path> all = Files.walk(tree)) {
            deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : deepestFirst) {
            Files.delete(path);
        }
    }
}
