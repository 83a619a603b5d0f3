package org.tunica.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.CaseTree;
import org.tunica.Replays;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.CaseBase;
import org.tunica.pastcases.CaseProgress;
import org.tunica.pastcases.PastCase;

/** A replay as a whole: the same bytes however it ran, nothing lost, faulty lines named. */
class ReplayTest {
    private static final int CASES = 450;
    private static final int BATCHES = 4;
    private static final int DEMO = CaseTree.demoFiles().size();

    /** The arteries of every demonstration case are sound, so none of them can turn and none needs the heat model. */
    private static final Tunica DRAFT = Edited.release()
            .with(
                    "rules/3-cautions/arteries.rule",
                    "limit ankle.index.critical\n  then caution strongly",
                    "limit ankle.index.critical\n  then caution slightly")
            .tunica();

    @TempDir
    private static Path shared;

    @TempDir
    private Path folder;

    private static String whole = "";

    /** Cases that ask nothing of the heat model, so that many can be replayed. */
    @BeforeAll
    static void fillABase() {
        base().add(LongStream.range(0, Long.MAX_VALUE)
                .mapToObj(Edited.SHIPPED.pastCases().inventedLibrary(8)::at)
                .filter(ReplayTest::asksNoHeat)
                .limit(CASES));
        whole = replayed(Optional.empty(), 2);
    }

    private static boolean asksNoHeat(PastCase past) {
        CaseFile caseFile = past.caseFile();
        return caseFile.limbs().stream()
                .flatMap(limb -> limb.segments().stream())
                .allMatch(segment -> Edited.SHIPPED
                        .physics()
                        .heatQuestions(caseFile, segment)
                        .isEmpty());
    }

    private static CaseBase base() {
        return Edited.SHIPPED.pastCases().caseBase(shared.resolve("base"));
    }

    private static String replayed(Optional<WorkFolder> work, int threads) {
        return replayed(base(), work, threads, CaseProgress.NONE);
    }

    private static String replayed(CaseBase base, Optional<WorkFolder> work, int threads, CaseProgress progress) {
        Replays replays = Edited.SHIPPED.against(DRAFT);
        ReplayRequest request = new ReplayRequest(Optional.of(base), Optional.empty(), work, threads);
        return replays.toJson(replays.prepare(request).run(progress));
    }

    @Test
    void threadsDoNotShowInTheResult() {
        assertEquals(whole, replayed(Optional.empty(), 1));
    }

    @Test
    void everyCaseIsCounted() {
        assertTrue(whole.contains("\"casesCount\" : " + (CASES + DEMO)), whole.substring(0, 1500));
        assertTrue(whole.contains("\"checkedCount\" : " + BATCHES), whole.substring(0, 1500));
    }

    @Test
    void killedAndStartedAgain_isTheSameAsOneRun() throws Exception {
        assertEquals(Child.HALTED, child().waitFor());
        Map<Path, FileTime> kept = batches();
        assertTrue(kept.size() >= 2 && kept.size() < BATCHES, kept::toString);
        try (WorkFolder work = WorkFolder.of(folder)) {
            assertEquals(whole, replayed(Optional.of(work), 2));
        }
        Map<Path, FileTime> all = batches();
        assertEquals(BATCHES, all.size());
        kept.forEach((file, time) -> assertEquals(time, all.get(file), "written once"));
    }

    private Map<Path, FileTime> batches() throws IOException {
        Map<Path, FileTime> batches = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".json")).toList()) {
                batches.put(file, Files.getLastModifiedTime(file));
            }
        }
        return batches;
    }

    private Process child() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Child.class.getName(),
                        shared.resolve("base").toString(),
                        folder.toString())
                .redirectErrorStream(true)
                .redirectOutput(shared.resolve("said").toFile())
                .start();
    }

    /** Replays on one thread and is gone at once, with nothing cleaned up, when two batches are done. */
    static final class Child {
        static final int HALTED = 77;

        private Child() {}

        public static void main(String[] args) {
            int[] batches = {0};
            replayed(
                    Edited.SHIPPED.pastCases().caseBase(Path.of(args[0])),
                    Optional.of(WorkFolder.of(Path.of(args[1]))),
                    1,
                    (done, all, cases) -> {
                        if (++batches[0] == 2) {
                            Runtime.getRuntime().halt(HALTED);
                        }
                    });
        }
    }

    @Test
    void aDamagedBatchIsReplayedAgain() throws IOException {
        try (WorkFolder work = WorkFolder.of(folder)) {
            replayed(Optional.of(work), 2);
        }
        Path damaged = batches().keySet().iterator().next();
        Files.writeString(damaged, Files.readString(damaged).replaceFirst("\"casesCount\":\\d+", "\"casesCount\":9"));
        try (WorkFolder work = WorkFolder.of(folder)) {
            assertEquals(whole, replayed(Optional.of(work), 2));
        }
    }

    /** A base that grew keeps what is done of its first cases, and only that. */
    @Test
    void batchesOfOtherCasesAreNotTaken() throws IOException {
        Path grown = folder.resolve("grown");
        try (WorkFolder work = WorkFolder.of(folder.resolve("work"))) {
            replayed(Optional.of(work), 2);
            List<String> lines = Files.readAllLines(shared.resolve("base").resolve(CaseBase.CASES));
            Files.createDirectories(grown);
            Files.write(grown.resolve(CaseBase.CASES), lines.subList(1, lines.size()));
            String without =
                    replayed(Edited.SHIPPED.pastCases().caseBase(grown), Optional.of(work), 2, CaseProgress.NONE);
            assertTrue(without.contains("\"casesCount\" : " + (CASES + DEMO - 1)));
        }
    }

    @Test
    void faultyLinesAreNamedAndThereIsNoResult() throws IOException {
        Path faulty = Files.createDirectories(folder.resolve("faulty"));
        List<String> lines = Files.readAllLines(shared.resolve("base").resolve(CaseBase.CASES));
        lines.set(4, lines.get(4).replaceFirst("\"caseRef\":\"p-", "\"caseRef\":\"at "));
        lines.set(411, "{");
        Files.write(faulty.resolve(CaseBase.CASES), lines);
        FaultyInput refused = assertThrows(
                FaultyInput.class,
                () -> replayed(Edited.SHIPPED.pastCases().caseBase(faulty), Optional.empty(), 2, CaseProgress.NONE));
        assertEquals(2, refused.faults().size(), refused::getMessage);
        assertTrue(refused.getMessage().contains("line 5, $.caseFile.caseRef"), refused::getMessage);
        assertTrue(refused.getMessage().contains("line 412"), refused::getMessage);
    }

    /** A range made narrower refuses past cases; that is a finding, not an end. */
    @Test
    void casesTheDraftCannotReadAreListed() {
        Tunica narrow = Edited.release()
                .with(
                        "knowledge/measurements.yaml",
                        "in the posture recorded\n  min: 0.3\n  max: 40",
                        "in the posture recorded\n  min: 0.3\n  max: 9")
                .tunica();
        Replays replays = Edited.SHIPPED.against(narrow);
        ReplayResult result = replays.prepare(
                        new ReplayRequest(Optional.of(base()), Optional.empty(), Optional.empty(), 2))
                .run(CaseProgress.NONE);
        assertTrue(result.unreadableCount() > 0);
        assertEquals(CASES + DEMO, result.cases().casesCount() + result.unreadableCount());
        assertFalse(result.unreadable().get(0).faults().isEmpty());
    }
}
