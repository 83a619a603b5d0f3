package org.tunica.governance;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;

/**
 * Puts a release together. The same input gives the same files.
 *
 * @param program version of the program that builds
 * @param today UTC
 */
public record ReleaseBuilder(String program, LocalDate today) {

    /**
     * What goes in beside rules and knowledge.
     *
     * @param pages by path: rule book, hazard log, scenarios
     * @param parts the list of parts of the program; empty when it was run from its source
     */
    public record Beside(ReplayReport replay, SortedMap<String, String> pages, Optional<String> parts) {}

    /**
     * The files of a release, manifest included.
     *
     * @throws FaultyInput with everything the author must mend
     */
    public ReleaseFiles build(ReleaseIntent intent, Bundle bundle, Beside beside) {
        check(intent, bundle);
        beside.replay().mustBeOf(bundle.digest());
        SortedMap<String, String> texts = new TreeMap<>(bundle.texts());
        texts.putAll(beside.pages());
        texts.put(ReleaseFiles.REPLAY, beside.replay().text());
        beside.parts().ifPresent(parts -> texts.put(ReleaseFiles.PARTS, parts));
        mustFit(texts);
        Manifest manifest = new Manifest(
                intent.version().toString(),
                intent.title(),
                program,
                today,
                intent.authors(),
                intent.changes(),
                intent.effectiveFrom(),
                intent.effectiveTo(),
                intent.reviewBy(),
                bundle.digest(),
                beside.replay().digest(),
                leftOut(beside),
                ReleaseFiles.of(texts).entries());
        texts.put(ReleaseFiles.MANIFEST, manifest.text());
        return ReleaseFiles.of(texts);
    }

    private static List<String> leftOut(Beside beside) {
        List<String> leftOut = new ArrayList<>();
        if (beside.parts().isEmpty()) {
            leftOut.add(ReleaseFiles.PARTS + ": this program was built without the list of its parts (profile parts)");
        }
        if (beside.pages().keySet().stream().noneMatch(path -> path.startsWith("features/"))) {
            leftOut.add("features/: no scenarios stood beside the rules");
        }
        return leftOut;
    }

    /** What an archive could not be read back with must not go in. */
    private static void mustFit(SortedMap<String, String> texts) {
        Faults faults = new Faults();
        texts.forEach((path, text) -> {
            if (text.getBytes(StandardCharsets.UTF_8).length > Bundle.LARGEST_FILE_BYTES) {
                faults.add(path, "is larger than " + Bundle.LARGEST_FILE_BYTES + " bytes");
            }
        });
        faults.throwIfAny("release");
    }

    private void check(ReleaseIntent intent, Bundle bundle) {
        Faults faults = new Faults();
        if (intent.title().isBlank()) {
            faults.add("title", "must say what is new");
        }
        if (intent.authors().isEmpty()) {
            faults.add("authors", "at least one author must be named");
        }
        if (!intent.reviewBy().isAfter(today)) {
            faults.add("review by", "must lie ahead, is " + intent.reviewBy());
        }
        intent.effectiveTo()
                .filter(to -> to.isBefore(intent.effectiveFrom().orElse(today)))
                .ifPresent(to -> faults.add("effective to", "lies before the day it may come into force"));
        intent.changes().stream()
                .filter(number ->
                        bundle.under("rules/changes/" + number + "-", ".yaml").isEmpty())
                .forEach(number -> faults.add("change " + number, "there is no such record in rules/changes/"));
        if (intent.changes().isEmpty()) {
            faults.add("changes", "at least one change record must be named");
        }
        faults.throwIfAny("release " + intent.version());
    }
}
