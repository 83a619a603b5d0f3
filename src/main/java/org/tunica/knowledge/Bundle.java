package org.tunica.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
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
import java.util.stream.Stream;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;

/** The texts of one release: every file under {@code rules/} and {@code knowledge/} but the demo cases. Immutable. */
public final class Bundle {
    /** The largest file read, in bytes. */
    public static final int LARGEST_FILE_BYTES = 1_000_000;

    /** The most files read from one folder. */
    public static final int MOST_FILES = 2_000;

    private static final List<String> FOLDERS = List.of("knowledge/", "rules/");
    private static final String DEMO = "knowledge/demo/";

    private final SortedMap<String, String> texts;

    private Bundle(SortedMap<String, String> texts) {
        this.texts = Collections.unmodifiableSortedMap(texts);
    }

    /** A bundle of texts by path, for example {@code rules/2-exclusions/pregnancy.rule}. */
    public static Bundle of(Map<String, String> texts) {
        return new Bundle(new TreeMap<>(texts));
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
        Faults faults = new Faults();
        SortedMap<String, String> texts = new TreeMap<>();
        for (String folder : FOLDERS) {
            readFolder(root, root.resolve(folder), texts, faults);
        }
        faults.throwIfAny("rules and knowledge");
        return new Bundle(texts);
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

    private static boolean belongs(String path) {
        return FOLDERS.stream().anyMatch(path::startsWith)
                && !path.startsWith(DEMO)
                && (path.endsWith(".yaml") || path.endsWith(".rule"));
    }

    private static Bundle fromJar(JarFile jar) throws IOException {
        Faults faults = new Faults();
        SortedMap<String, String> texts = new TreeMap<>();
        for (JarEntry entry : Collections.list(jar.entries())) {
            if (belongs(entry.getName())) {
                try (InputStream in = jar.getInputStream(entry)) {
                    put(entry.getName(), in.readNBytes(LARGEST_FILE_BYTES + 1), texts, faults);
                }
            }
        }
        faults.throwIfAny("rules and knowledge");
        return new Bundle(texts);
    }

    private static void readFolder(Path root, Path folder, SortedMap<String, String> texts, Faults faults) {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            faults.add(path(root, folder), "is not a folder");
            return;
        }
        try (Stream<Path> walk = Files.walk(folder)) {
            List<Path> files = walk.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .filter(file -> belongs(path(root, file)))
                    .limit(MOST_FILES + 1L)
                    .sorted()
                    .toList();
            if (files.size() > MOST_FILES) {
                faults.add(path(root, folder), "holds more than " + MOST_FILES + " files");
                return;
            }
            for (Path file : files) {
                readFile(file, path(root, file), texts, faults);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String path(Path root, Path file) {
        return root.relativize(file).toString().replace('\\', '/');
    }

    private static void readFile(Path file, String path, SortedMap<String, String> texts, Faults faults)
            throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            put(path, in.readNBytes(LARGEST_FILE_BYTES + 1), texts, faults);
        }
    }

    private static void put(String path, byte[] bytes, SortedMap<String, String> texts, Faults faults) {
        if (bytes.length > LARGEST_FILE_BYTES) {
            faults.add(path, "is larger than " + LARGEST_FILE_BYTES + " bytes");
            return;
        }
        try {
            texts.put(
                    path,
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .decode(ByteBuffer.wrap(bytes))
                            .toString());
        } catch (CharacterCodingException e) {
            faults.add(path, "is not UTF-8 text");
        }
    }
}
