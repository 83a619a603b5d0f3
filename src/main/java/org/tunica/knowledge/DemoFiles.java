package org.tunica.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** The invented cases shipped with the program; they are no knowledge and belong to no release. */
public final class DemoFiles {
    private static final String FOLDER = "knowledge/demo/";
    private static final String ANCHOR = "README.md";

    private DemoFiles() {}

    /** The bytes of every case, {@code tunica-case/1}, by the name of its file. */
    public static SortedMap<String, byte[]> cases() {
        URL anchor = DemoFiles.class.getResource("/" + FOLDER + ANCHOR);
        if (anchor == null) {
            return new TreeMap<>();
        }
        try {
            return anchor.openConnection() instanceof JarURLConnection jar
                    ? inJar(jar.getJarFile())
                    : inFolder(Path.of(anchor.toURI()).getParent());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static SortedMap<String, byte[]> inJar(JarFile jar) throws IOException {
        SortedMap<String, byte[]> found = new TreeMap<>();
        for (JarEntry entry : Collections.list(jar.entries())) {
            if (entry.getName().matches(FOLDER + "[^/]+\\.json")) {
                try (InputStream in = jar.getInputStream(entry)) {
                    found.put(entry.getName().substring(FOLDER.length()), in.readAllBytes());
                }
            }
        }
        return found;
    }

    private static SortedMap<String, byte[]> inFolder(Path folder) throws IOException {
        SortedMap<String, byte[]> found = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".json")).toList()) {
                found.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return found;
    }
}
