package org.tunica.replay;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.tunica.casefile.CaseFile;

/** The demonstration cases shipped with the program; they are made up. */
final class DemoCases extends ReplayedCases {
    private static final String FOLDER = "knowledge/demo/";
    private static final String ANCHOR = "/" + FOLDER + "straight-thigh-trunk.json";

    /** By name. */
    private final SortedMap<String, byte[]> files;

    DemoCases() {
        this.files = shipped();
    }

    @Override
    String says() {
        return files.size() + " demonstration cases, made up";
    }

    @Override
    boolean invented() {
        return true;
    }

    @Override
    int each(int firstNumber, Consumer<Batch> taker) {
        Digest digest = new Digest();
        List<CaseToReplay> cases = new ArrayList<>();
        files.forEach((name, json) -> {
            digest.and(name).and(json);
            cases.add(side -> CaseFile.read(name, json, side.knowledge()));
        });
        taker.accept(new Batch(firstNumber, digest.text(), cases, files.size(), files.size()));
        return 1;
    }

    private static SortedMap<String, byte[]> shipped() {
        URL anchor = Optional.ofNullable(DemoCases.class.getResource(ANCHOR))
                .orElseThrow(() -> new IllegalStateException(ANCHOR + " is missing from the program"));
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
        SortedMap<String, byte[]> cases = new TreeMap<>();
        for (JarEntry entry : Collections.list(jar.entries())) {
            String name = entry.getName();
            if (name.startsWith(FOLDER) && isCase(name.substring(FOLDER.length()))) {
                try (InputStream in = jar.getInputStream(entry)) {
                    cases.put(name.substring(FOLDER.length()), in.readAllBytes());
                }
            }
        }
        return cases;
    }

    private static SortedMap<String, byte[]> inFolder(Path folder) throws IOException {
        SortedMap<String, byte[]> cases = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString();
                if (isCase(name)) {
                    cases.put(name, Files.readAllBytes(file));
                }
            }
        }
        return cases;
    }

    /** Folders below hold records and follow-ups. */
    private static boolean isCase(String name) {
        return name.endsWith(".json") && !name.contains("/");
    }
}
