package org.tunica.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;

/** Reads a bundle from a folder that holds rules/ and knowledge/; links are not followed. */
final class BundleFolder {
    private final Path root;
    private final BundleTexts texts = new BundleTexts();

    BundleFolder(Path root) {
        this.root = root;
    }

    SortedMap<String, String> read() {
        readUnder(BundleTexts.KNOWLEDGE);
        readUnder(BundleTexts.RULES);
        return texts.texts();
    }

    private void readUnder(String name) {
        Path folder = root.resolve(name);
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            texts.fault(path(folder), "is not a folder");
            return;
        }
        for (Path file : entries(folder)) {
            if (BundleTexts.belongs(path(file)) && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
                readFile(file);
            }
        }
    }

    private List<Path> entries(Path folder) {
        try (Stream<Path> walk = Files.walk(folder)) {
            List<Path> entries = walk.limit(Bundle.MOST_ENTRIES + 1L).sorted().toList();
            if (entries.size() <= Bundle.MOST_ENTRIES) {
                return entries;
            }
            texts.fault(path(folder), "holds more than " + Bundle.MOST_ENTRIES + " files and folders");
        } catch (IOException | UncheckedIOException e) {
            texts.fault(path(folder), "cannot be read");
        }
        return List.of();
    }

    private void readFile(Path file) {
        String path = path(file);
        if (texts.named(path)) {
            try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
                texts.put(path, in.readNBytes(Bundle.LARGEST_FILE_BYTES + 1));
            } catch (IOException e) {
                texts.fault(path, "cannot be read");
            }
        }
    }

    private String path(Path file) {
        return root.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
    }
}
