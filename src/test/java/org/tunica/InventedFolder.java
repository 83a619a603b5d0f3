package org.tunica;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.tunica.pastcases.PastCase;

/** A case base of made-up cases in a folder. */
public final class InventedFolder {
    private InventedFolder() {}

    /** Writes the first cases of a made-up library as a case base. */
    public static List<PastCase> write(Path folder, int count) throws IOException {
        Tunica tunica = Tunica.shipped();
        List<PastCase> cases =
                tunica.pastCases().inventedLibrary(7).cases(count).toList();
        String lines = cases.stream().map(tunica.pastCases()::toLine).collect(Collectors.joining("\n", "", "\n"));
        Files.write(folder.resolve("cases.jsonl"), lines.getBytes(StandardCharsets.UTF_8));
        return cases;
    }
}
