package org.tunica.similar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.lucene.store.FSDirectory;
import org.apache.lucene.store.Lock;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An index that is lost, damaged, old or half is never searched: it is built again. */
class IndexFolderTest {
    private static final List<Entry> ENTRIES = Entries.draw(300, 5, 0.2);
    private static final List<Entry> OTHERS = Entries.draw(200, 6, 0.2);
    private static final Question ASKED =
            new Question(Profiles.SIMILARITY, ENTRIES.get(0).profile());

    @TempDir
    private Path folder;

    private int built;

    @BeforeEach
    void forget() {
        built = 0;
    }

    @Test
    void whole_isOpenedAndNotBuiltAgain() throws IOException {
        String first = answer("one");
        assertEquals(first, answer("one"));
        assertEquals(1, built);
        assertEquals(List.of("building.lock", "v-one"), names());
    }

    @Test
    void lostOrOfAnotherVersion_isBuiltAnewAndTheOldOneGoes() throws IOException {
        String first = answer("one");
        remove(folder.resolve("v-one"));
        assertEquals(first, answer("one"));
        assertEquals(2, built);
        assertEquals(first, answer("two"));
        assertEquals(3, built);
        assertEquals(List.of("building.lock", "v-two"), names());
    }

    /** Cut in half, one bit turned at the start, in the middle and at the end, emptied: of every file. */
    @Test
    void anyFileDamaged_theAnswerIsTheSame() throws IOException {
        String whole = answer("one");
        int damaged = 0;
        for (String name : files()) {
            for (int damage = 0; damage < 5; damage++) {
                Path file = folder.resolve("v-one").resolve(name);
                if (!Files.exists(file) || Files.size(file) == 0) {
                    continue; // the names change when it is built again
                }
                damage(file, damage);
                damaged++;
                assertEquals(whole, answer("one"), name + ", damage " + damage);
            }
        }
        assertTrue(damaged >= 20, "only " + damaged + " damaged");
        assertEquals(damaged + 1, built, "some damage went unnoticed");
    }

    private static void damage(Path file, int damage) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        if (damage == 0) {
            Files.write(file, new byte[0]);
        } else if (damage == 1) {
            Files.write(file, Arrays.copyOf(bytes, bytes.length / 2));
        } else {
            bytes[(bytes.length - 1) * (damage - 2) / 2] ^= 1;
            Files.write(file, bytes);
        }
    }

    @Test
    void buildingThatDies_leavesTheOldOneAndNothingToBeFound() throws IOException {
        String first = answer("one");
        assertThrows(
                IllegalStateException.class,
                () -> new IndexFolder(folder).open("two", index -> {
                    ENTRIES.subList(0, 50).forEach(index);
                    throw new IllegalStateException("killed");
                }));
        assertFalse(Files.exists(folder.resolve("v-two")));
        assertEquals(first, answer("one"));
        assertEquals(1, built, "the old one was not touched");
        // what a process that was killed leaves is swept away by the next that builds
        Files.writeString(folder.resolve("v-two.half").resolve("segments_1"), "half");
        assertEquals(first, answer("two"));
        assertEquals(List.of("building.lock", "v-two"), names());
    }

    @Test
    void whileAnotherIsBuilt_theOldOneAnswersAndGoesOnAfterTheSwap() throws IOException {
        String first = answer("one");
        try (CaseIndex open = new IndexFolder(folder).open("one", this::never)) {
            CaseIndex.Filling others = index -> {
                OTHERS.forEach(index);
                assertEquals(first, said(open));
                assertEquals(first, again());
            };
            try (CaseIndex next = new IndexFolder(folder).open("two", others)) {
                assertEquals(200, next.size());
                assertEquals(first, said(open), "a reader that is open keeps what it has");
            }
        }
    }

    private String again() {
        try {
            return answer("one");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void whileAnotherProcessBuilds_oneIsMadeInMemory() throws IOException {
        String inMemory;
        try (FSDirectory locks = FSDirectory.open(folder);
                Lock lock = locks.obtainLock("building.lock")) {
            lock.ensureValid();
            inMemory = answer("one");
            assertEquals(List.of("building.lock"), names());
        }
        assertEquals(inMemory, answer("one"));
        assertEquals(2, built);
    }

    private String answer(String version) throws IOException {
        try (CaseIndex index = new IndexFolder(folder).open(version, entries -> {
            built++;
            ENTRIES.forEach(entries);
        })) {
            return said(index);
        }
    }

    private void never(Consumer<Entry> index) {
        throw new AssertionError("must not be built");
    }

    private static String said(CaseIndex index) {
        return index.size() + " " + index.nearest(ASKED, SimilarFilter.ALL, 5)
                + index.byWords("nerve pain", SimilarFilter.ALL, 5);
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("v-one"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static void remove(Path tree) throws IOException {
        try (Stream<Path> all = Files.walk(tree)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
