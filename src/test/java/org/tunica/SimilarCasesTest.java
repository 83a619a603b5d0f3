package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.PastCase;
import org.tunica.plan.Advice;
import org.tunica.plan.SegmentAdvice;
import org.tunica.plan.SimilarAdvice;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.PastSegment;
import org.tunica.similar.SimilarCases;
import org.tunica.similar.SimilarFilter;
import org.tunica.similar.SimilarRequest;

/** Past segments like those of a case, from made-up cases in a folder. */
class SimilarCasesTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final int MANY = 1_000;

    @TempDir
    private Path folder;

    @Test
    void caseOfTheBase_isFoundFirstByEachOfItsTreatedSegments() throws IOException {
        List<PastCase> cases = InventedFolder.write(folder, 40);
        try (CaseLibrary library = TUNICA.likeness().cases(folder)) {
            assertEquals(40, cases.size());
            int asked = 0;
            for (PastCase pastCase : cases) {
                List<String> treated = PastSegment.of(pastCase, TUNICA.knowledge()).stream()
                        .map(past -> past.segment().ref())
                        .toList();
                SimilarCases similar = TUNICA.likeness().similar(pastCase.caseFile(), library, SimilarRequest.usual());
                for (SimilarCases.ForSegment segment : similar.segments()) {
                    List<SimilarAdvice.Nearest> nearest = segment.similar().nearest();
                    if (treated.contains(segment.ref()) && !nearest.isEmpty()) {
                        assertEquals(1, nearest.get(0).similarity().orElseThrow(), 1e-9);
                        assertFalse(nearest.get(0).happened().isEmpty());
                        asked++;
                    }
                }
            }
            assertTrue(asked > 40, "only " + asked + " segments asked about");
        }
    }

    @Test
    void filters_keepWhatTheySayAndCountIt() throws IOException {
        List<PastCase> cases = InventedFolder.write(folder, 60);
        List<PastSegment> all = cases.stream()
                .flatMap(pastCase -> PastSegment.of(pastCase, TUNICA.knowledge()).stream())
                .toList();
        CaseFile asked = cases.get(0).caseFile();
        String ref = asked.limbs().get(0).segments().get(0).ref();
        String technique = all.get(0).treated().technique();
        try (CaseLibrary library = TUNICA.likeness().cases(folder)) {
            assertEquals(all.size(), library.size());
            SimilarFilter filter = new SimilarFilter(
                    Optional.of(technique),
                    Optional.of(SimilarFilter.Outcome.CLOSED),
                    Optional.of(true),
                    Optional.empty(),
                    Optional.empty());
            SimilarAdvice found = TUNICA.likeness()
                    .similar(asked, library, new SimilarRequest(Optional.of(ref), filter, MANY))
                    .segments()
                    .get(0)
                    .similar();
            long expected = all.stream()
                    .filter(past -> past.treated().technique().equals(technique))
                    .filter(past -> past.closed().equals(Optional.of(true)))
                    .count();
            assertTrue(expected > 0);
            assertEquals(expected, found.considered());
            assertEquals(expected, found.nearest().size() + found.tooLittleKnown());
            assertTrue(found.nearest().stream().allMatch(one -> one.technique().equals(technique)));
        }
    }

    @Test
    void words_narrowAndAloneOrderByThemselves() throws IOException {
        List<PastCase> cases = InventedFolder.write(folder, 60);
        long holding = cases.stream()
                .filter(pastCase -> String.join(" ", pastCase.notes())
                        .toLowerCase(Locale.ROOT)
                        .contains("closed"))
                .flatMap(pastCase -> PastSegment.of(pastCase, TUNICA.knowledge()).stream())
                .count();
        try (CaseLibrary library = TUNICA.likeness().cases(folder)) {
            SimilarRequest many = new SimilarRequest(Optional.empty(), SimilarFilter.ALL, MANY);
            SimilarCases alone = TUNICA.likeness().similar("CLOSED", library, many);
            assertEquals(holding, alone.byWords().orElseThrow().nearest().size());
            SimilarFilter words = new SimilarFilter(
                    Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("closed"));
            SimilarCases both = TUNICA.likeness()
                    .similar(cases.get(0).caseFile(), library, new SimilarRequest(Optional.empty(), words, MANY));
            assertEquals(holding, both.segments().get(0).similar().considered());
        }
    }

    @Test
    void adviceWithPastCases_isTheSameBytesButForThem() throws IOException {
        InventedFolder.write(folder, 30);
        CaseFile caseFile =
                TUNICA.readCase("demo", Files.readAllBytes(Path.of("knowledge/demo/straight-thigh-trunk.json")));
        try (CaseLibrary library = TUNICA.likeness().cases(folder)) {
            Advice plain = TUNICA.advise(caseFile);
            Advice with = TUNICA.likeness().withSimilar(plain, caseFile, library);
            assertTrue(with.segments().stream()
                    .allMatch(segment ->
                            !segment.similar().orElseThrow().nearest().isEmpty()));
            Advice without = new Advice(
                    with.format(),
                    with.caseRef(),
                    with.release(),
                    with.seed(),
                    with.caution(),
                    with.segments().stream().map(SimilarCasesTest::bare).toList());
            assertEquals(TUNICA.toJson(plain), TUNICA.toJson(without));
        }
    }

    private static SegmentAdvice bare(SegmentAdvice segment) {
        return new SegmentAdvice(
                segment.ref(),
                segment.side(),
                segment.vein(),
                segment.level(),
                segment.derived(),
                segment.options(),
                segment.nearMisses(),
                segment.ranking(),
                segment.firmness(),
                segment.hardCase(),
                Optional.empty());
    }

    @Test
    void baseThatGrew_isIndexedAnew() throws IOException {
        List<PastCase> cases = InventedFolder.write(folder, 10);
        int before = size();
        List<PastCase> more = TUNICA.pastCases().inventedLibrary(8).cases(5).toList();
        for (PastCase pastCase : more) {
            Files.writeString(
                    folder.resolve("cases.jsonl"),
                    TUNICA.pastCases().toLine(pastCase) + "\n",
                    StandardOpenOption.APPEND);
        }
        assertEquals(
                before
                        + more.stream()
                                .mapToInt(pastCase -> PastSegment.of(pastCase, TUNICA.knowledge())
                                        .size())
                                .sum(),
                size());
        assertEquals(10, cases.size());
    }

    private int size() {
        try (CaseLibrary library = TUNICA.likeness().cases(folder)) {
            return library.size();
        }
    }

    @Test
    void faultyLine_isNamedAndNoIndexIsLeft() throws IOException {
        InventedFolder.write(folder, 3);
        Files.writeString(folder.resolve("cases.jsonl"), "{\"format\":\"tunica-past/1\"}\n", StandardOpenOption.APPEND);
        FaultyInput faulty = assertThrows(FaultyInput.class, this::size);
        assertTrue(faulty.getMessage().contains("cases.jsonl, line 4"), faulty.getMessage());
        try (Stream<Path> left = Files.list(folder.resolve("index"))) {
            assertTrue(left.map(path -> path.getFileName().toString())
                    .allMatch(name -> name.equals("building.lock") || name.endsWith(".half")));
        }
    }

    @Test
    void sameQuestion_sameBytes() throws IOException {
        List<PastCase> cases = InventedFolder.write(folder, 20);
        String first;
        try (CaseLibrary library = TUNICA.likeness().cases(folder)) {
            first = TUNICA.toJson(TUNICA.likeness().similar(cases.get(3).caseFile(), library, SimilarRequest.usual()));
        }
        try (CaseLibrary library = TUNICA.likeness().cases(folder)) {
            assertEquals(
                    first,
                    TUNICA.toJson(TUNICA.likeness().similar(cases.get(3).caseFile(), library, SimilarRequest.usual())));
        }
    }
}
