package org.tunica.knowledge;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.function.Predicate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;

/**
 * Reads a bundle from a .zip, in memory: nothing is ever written, so a name has no place to escape to and a link is only
 * a text.
 *
 * <p>An archive tells its content twice, in the entries as they follow each other and in the directory at its end, and
 * programs differ in which they believe. Here both must say the same. No size the archive declares is trusted: bytes are
 * counted as they are inflated, those passed over too.
 */
final class BundleArchive {
    private final Path zip;
    private final Predicate<String> wanted;
    private final BundleTexts texts = new BundleTexts();
    private long inflatedBytes;

    /** @param wanted which paths are taken; the rest is passed over, but checked and counted */
    BundleArchive(Path zip, Predicate<String> wanted) {
        this.zip = zip;
        this.wanted = wanted;
    }

    SortedMap<String, String> read() {
        try {
            List<String> listed = listed();
            if (follow(bytes()).equals(listed)) {
                holds(listed, BundleTexts.KNOWLEDGE);
                holds(listed, BundleTexts.RULES);
            } else {
                texts.fault(archive(), "its entries are not those its directory lists");
            }
        } catch (IOException | IllegalArgumentException e) {
            texts.fault(archive(), "is not a readable .zip archive: " + e.getMessage());
        }
        return texts.texts();
    }

    private String archive() {
        return String.valueOf(zip.getFileName());
    }

    private byte[] bytes() throws IOException {
        try (InputStream in = Files.newInputStream(zip)) {
            return in.readNBytes((int) Bundle.LARGEST_TOTAL_BYTES);
        }
    }

    /** The entries as the directory tells them; names that cannot be used are noted. */
    private List<String> listed() throws IOException {
        if (!Files.isRegularFile(zip)) {
            texts.stop(archive(), "is not a file");
        }
        if (Files.size(zip) > Bundle.LARGEST_TOTAL_BYTES) {
            texts.stop(archive(), "is larger than " + Bundle.LARGEST_TOTAL_BYTES + " bytes");
        }
        try (ZipFile file = new ZipFile(zip.toFile(), StandardCharsets.UTF_8)) {
            if (file.size() > Bundle.MOST_ENTRIES) {
                texts.stop(archive(), "holds more than " + Bundle.MOST_ENTRIES + " entries");
            }
            file.stream().map(ZipEntry::getName).forEach(texts::named);
            return file.stream().map(BundleArchive::told).sorted().toList();
        }
    }

    /** The entries as they follow each other; the texts among them are taken. */
    private List<String> follow(byte[] archive) throws IOException {
        List<String> told = new ArrayList<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                entry(entry, in);
                told.add(told(entry));
            }
        }
        return told.stream().sorted().toList();
    }

    /** What an archive tells of an entry; of one that was inflated, what was found. */
    private static String told(ZipEntry entry) {
        return entry.getName() + " " + entry.getSize() + " " + entry.getCrc();
    }

    private void entry(ZipEntry entry, InputStream in) throws IOException {
        String path = entry.getName();
        byte[] bytes = in.readNBytes(Bundle.LARGEST_FILE_BYTES + 1);
        inflated(path, bytes.length);
        if (wanted.test(path)) {
            texts.put(path, bytes);
        }
        byte[] buffer = new byte[8192];
        for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
            inflated(path, read);
        }
    }

    private void inflated(String path, int bytes) {
        inflatedBytes += bytes;
        if (inflatedBytes > Bundle.LARGEST_TOTAL_BYTES) {
            texts.stop(
                    path,
                    "with this entry the archive inflates to more than " + Bundle.LARGEST_TOTAL_BYTES
                            + " bytes; the reading ended here");
        }
    }

    private void holds(List<String> listed, String folder) {
        if (listed.stream().noneMatch(name -> name.startsWith(folder))) {
            texts.fault(archive(), "holds no " + folder);
        }
    }
}
