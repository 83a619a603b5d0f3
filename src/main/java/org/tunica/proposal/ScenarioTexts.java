package org.tunica.proposal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tunica.casefile.Sha256;

/** The scenarios of a folder as texts by path, {@code features/...}; links are not followed. */
final class ScenarioTexts {
    static final String FOLDER = "features";
    private static final String ENDING = ".feature";

    private ScenarioTexts() {}

    /** Nothing when there is no such folder. */
    static SortedMap<String, String> in(Path root) throws IOException {
        SortedMap<String, String> texts = new TreeMap<>();
        Path folder = root.resolve(FOLDER);
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return texts;
        }
        for (Path file : files(folder)) {
            String path = root.relativize(file)
                    .toString()
                    .replace(file.getFileSystem().getSeparator(), "/");
            texts.put(path, Files.readString(file));
        }
        return texts;
    }

    /** Digest over every path and text; each text after its length, so that nothing can pass for another. */
    static String digest(SortedMap<String, String> texts) {
        StringBuilder all = new StringBuilder();
        texts.forEach((path, text) ->
                all.append(path).append(' ').append(text.length()).append('\n').append(text));
        return Sha256.of(all.toString());
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(path -> path.toString().endsWith(ENDING))
                    .filter(path -> Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS))
                    .sorted()
                    .toList();
        }
    }
}
