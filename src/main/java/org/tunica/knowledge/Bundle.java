package org.tunica.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** The texts of one release: every file under {@code rules/} and {@code knowledge/} but the demo cases. Immutable. */
public final class Bundle {
    /** The largest file read, in bytes. */
    public static final int LARGEST_FILE_BYTES = 1_000_000;

    /** The most files of a bundle. */
    public static final int MOST_FILES = 2_000;

    /** The most entries looked at in one folder or archive: files, folders and what is passed over. */
    public static final int MOST_ENTRIES = 4_000;

    /** The largest sum of all files, and of everything an archive inflates to, in bytes; about 30 times what is shipped. */
    public static final long LARGEST_TOTAL_BYTES = 10_000_000;

    private final SortedMap<String, String> texts;

    private Bundle(SortedMap<String, String> texts) {
        this.texts = Collections.unmodifiableSortedMap(texts);
    }

    /**
     * A bundle of texts by path, for example {@code rules/2-exclusions/pregnancy.rule}.
     *
     * @throws FaultyInput when a name or a bound is not kept
     */
    public static Bundle of(Map<String, String> texts) {
        BundleTexts gathered = new BundleTexts();
        new TreeMap<>(texts).forEach((path, text) -> {
            if (gathered.named(path)) {
                gathered.put(path, text.getBytes(StandardCharsets.UTF_8));
            }
        });
        return new Bundle(gathered.texts());
    }

    /** The bundle shipped with this program. */
    public static Bundle shipped() {
        URL anchor = Bundle.class.getResource("/knowledge/glossary.yaml");
        if (anchor == null) {
            throw new FaultyInput(
                    "program", List.of(new Fault("knowledge/glossary.yaml", "is missing from the program")));
        }
        try {
            if (anchor.openConnection() instanceof JarURLConnection jar) {
                return fromJar(jar.getJarFile());
            }
            return in(Path.of(anchor.toURI()).getParent().getParent());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * The bundle in a folder that holds {@code rules/} and {@code knowledge/}. Links are not followed.
     *
     * @throws FaultyInput when a file is too large, no UTF-8, or there are too many
     */
    public static Bundle in(Path root) {
        return new Bundle(new BundleFolder(root).read());
    }

    /**
     * The bundle in a .zip that holds rules/ and knowledge/ at its top. Everything else in it is passed over, but checked
     * and counted.
     *
     * @throws FaultyInput with every fault: an archive cut short, entries and directory that differ, names that lead
     *     elsewhere or stand twice, more entries or bytes (counted while inflating) than the bounds allow, no UTF-8
     */
    public static Bundle inArchive(Path zip) {
        return new Bundle(new BundleArchive(zip, BundleTexts::belongs).read());
    }

    /**
     * Every text of a .zip, read as carefully as a bundle: nothing in it is passed over but folders.
     *
     * @throws FaultyInput as {@link #inArchive}
     */
    public static SortedMap<String, String> everyTextIn(Path zip) {
        return new BundleArchive(zip, path -> !path.endsWith("/")).read();
    }

    /**
     * The bundle in a folder or in a .zip, whichever it is.
     *
     * @throws FaultyInput with every fault, or when it is neither
     */
    public static Bundle at(Path path) {
        return Files.isDirectory(path) ? in(path) : inArchive(path);
    }

    /** The texts by path, in order of path. */
    public SortedMap<String, String> texts() {
        return texts;
    }

    /** The texts whose path starts with {@code folder} and ends with {@code ending}, in order of path. */
    public SortedMap<String, String> under(String folder, String ending) {
        SortedMap<String, String> found = new TreeMap<>();
        texts.forEach((path, text) -> {
            if (path.startsWith(folder) && path.endsWith(ending)) {
                found.put(path, text);
            }
        });
        return found;
    }

    /** {@code sha256:} and the digest over every path and text, in order of path. */
    public String digest() {
        try {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            texts.forEach((path, text) -> {
                update(sha256, path);
                update(sha256, text);
            });
            return "sha256:" + HexFormat.of().formatHex(sha256.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Length first, so that no two different bundles feed the same bytes. */
    private static void update(MessageDigest digest, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
        digest.update(bytes);
    }

    private static Bundle fromJar(JarFile jar) throws IOException {
        BundleTexts texts = new BundleTexts();
        for (JarEntry entry : Collections.list(jar.entries())) {
            if (BundleTexts.belongs(entry.getName()) && !entry.isDirectory() && texts.named(entry.getName())) {
                try (InputStream in = jar.getInputStream(entry)) {
                    texts.put(entry.getName(), in.readNBytes(LARGEST_FILE_BYTES + 1));
                }
            }
        }
        return new Bundle(texts.texts());
    }
}
