package org.tunica.fhir;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Invented sites, records and days for tests. */
final class DemoSite {
    static final Tunica TUNICA = Tunica.shipped();
    static final LocalDate DAY = LocalDate.of(2026, 3, 20);
    static final JsonMapper JSON = new JsonMapper();
    private static final Path FOLDER = Path.of("knowledge/demo/fhir");

    private DemoSite() {}

    /** A site whose room is that of a case. */
    static Site roomOf(CaseTree tree) {
        return of("", tree.root().get("room"));
    }

    /** A site with the room of the sound leg and some more lines of YAML. */
    static Site with(String lines) {
        return of(lines, CaseTree.soundLeg().root().get("room"));
    }

    private static Site of(String lines, JsonNode room) {
        String yaml = "format: tunica-site/1\nroom: " + room + "\n" + lines;
        return Site.read("site", yaml.getBytes(StandardCharsets.UTF_8), TUNICA);
    }

    static Site shown() {
        return Site.read("site.yaml", file("site.yaml"), TUNICA);
    }

    static byte[] file(String name) {
        try {
            return Files.readAllBytes(FOLDER.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
