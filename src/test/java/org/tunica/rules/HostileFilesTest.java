package org.tunica.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinWorkerThread;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordingFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;

/** Files written to run code, to hang, to fill the memory or to deceive are refused, or are only what they say. */
class HostileFilesTest {
    private static final Duration SHORT = Duration.ofSeconds(10);

    @TempDir
    static Path root;

    /** What each file's reading told, and what the virtual machine did meanwhile. */
    private static final Map<String, String> TOLD = new HashMap<>();

    private static List<String> opened;
    private static Set<Long> childrenBefore;

    @BeforeAll
    static void readAll() throws IOException {
        HostileFile.writeSurroundings(root);
        List<Runnable> readings = new ArrayList<>();
        Knowledge around = null;
        for (HostileFile file : files()) {
            try {
                Bundle bundle = file.bundle(root);
                Knowledge known = around == null ? Knowledge.of(bundle) : around;
                around = known;
                readings.add(() -> TOLD.put(file.name(), told(file, bundle, known)));
            } catch (FaultyInput e) {
                TOLD.put(file.name(), HostileFile.told(e));
            }
        }
        readings.get(0).run();
        readings.get(readings.size() - 1).run();
        childrenBefore = children();
        opened = opened(() -> readings.forEach(Runnable::run));
    }

    private static String told(HostileFile file, Bundle bundle, Knowledge around) {
        return assertTimeout(SHORT, () -> file.told(bundle, around), file.name());
    }

    static List<HostileFile> files() {
        return HostileFile.all();
    }

    @ParameterizedTest
    @MethodSource("files")
    void isRefusedOrAcceptedAsWhatItSays(HostileFile file) {
        assertFalse(file.says().isEmpty(), "nothing is expected of " + file);
        assertEquals(List.of(), file.unsaid(TOLD.get(file.name())));
    }

    @Test
    void everyFileOfTheFolderIsExpected() throws IOException {
        Set<String> listed = files().stream().map(HostileFile::name).collect(Collectors.toSet());
        try (Stream<Path> walk = Files.walk(Path.of("src/test/resources/hostile"), 2)) {
            assertEquals(
                    listed,
                    walk.filter(path -> path.toString().matches(".*\\.(rule|yaml)"))
                            .map(path -> path.getParent().getFileName() + "/" + path.getFileName())
                            .collect(Collectors.toSet()));
        }
        assertTrue(listed.size() >= 60, "only " + listed.size());
    }

    /** Seen by the flight recorder of the virtual machine: no process, no socket, no file but those of
     * classes, of chance, and what was open (the commands of the test runner have no name). */
    @Test
    void nothingIsStartedOpenedOrWritten() {
        assertEquals(List.of(), opened);
        assertFalse(Files.exists(Path.of("target/hostile-was-here")));
        assertEquals(childrenBefore, children());
    }

    private static Set<Long> children() {
        return ProcessHandle.current().children().map(ProcessHandle::pid).collect(Collectors.toSet());
    }

    /** Threads that were at work before, such as those of a server another test shares; what they do is not ours. */
    private static Set<Long> others() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread != Thread.currentThread() && !(thread instanceof ForkJoinWorkerThread))
                .map(Thread::getId)
                .collect(Collectors.toSet());
    }

    /** The recorder does see what a test means to catch. */
    @Test
    void aFileThatIsRead_isSeen() throws IOException {
        Path canary = Files.writeString(root.resolve("canary.txt"), "seen");
        List<String> seen = opened(() -> assertEquals("seen", read(canary)));
        assertTrue(seen.stream().anyMatch(event -> event.contains("canary.txt")), seen::toString);
        Files.delete(canary);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<String> opened(Runnable work) throws IOException {
        Path dump = Files.createTempFile("recorded", ".jfr");
        Set<Long> others = others();
        try (Recording recording = new Recording()) {
            for (String event : List.of("ProcessStart", "FileRead", "FileWrite", "SocketRead", "SocketWrite")) {
                recording.enable("jdk." + event).withoutStackTrace().withThreshold(Duration.ZERO);
            }
            recording.start();
            work.run();
            recording.stop();
            recording.dump(dump);
        }
        try {
            return RecordingFile.readAllEvents(dump).stream()
                    .filter(event -> event.getThread() == null
                            || !others.contains(event.getThread().getJavaThreadId()))
                    .map(HostileFilesTest::what)
                    .filter(what -> !what.matches(".*(\\.jar|\\.class|/modules|\\.jfr|/dev/u?random|FileRead null)$"))
                    .toList();
        } finally {
            Files.delete(dump);
        }
    }

    private static String what(RecordedEvent event) {
        String name = event.getEventType().getName();
        return name + " " + (event.hasField("path") ? event.getString("path") : event.toString());
    }

    @Test
    void theMostRulesAllowed_andOneMore() {
        assertTimeout(
                SHORT,
                () -> assertEquals(
                        RuleParser.MOST_RULES, parse(RuleParser.MOST_RULES).size()));
        FaultyInput refused = assertThrows(FaultyInput.class, () -> parse(RuleParser.MOST_RULES + 1));
        assertTrue(refused.getMessage().contains("there are more than 5000 rules"), refused::getMessage);
        assertThrows(FaultyInput.class, () -> parse(10_000));
    }

    /** The bound is one the engine can run: all of them speak about an option of which nothing is known. */
    @Test
    void theMostRulesAllowed_run() {
        List<Rule> rules = parse(RuleParser.MOST_RULES);
        OptionFacts option =
                OptionFacts.ofNothing(Texts.KNOWLEDGE.glossary().fields().size());
        List<Verdict> verdicts = assertTimeout(SHORT, () -> new DroolsEngine(rules).judge(List.of(option)));
        assertEquals(RuleParser.MOST_RULES, verdicts.size());
    }

    private static List<Rule> parse(int count) {
        String one = Texts.RULE.substring(Texts.RULE.indexOf("rule"));
        Map<String, String> files = IntStream.range(0, count)
                .boxed()
                .collect(Collectors.groupingBy(
                        i -> "rules/2-exclusions/" + i / RuleParser.MOST_RULES_OF_A_FILE + ".rule",
                        Collectors.mapping(
                                i -> one.replace("EXC-900", String.format("EX%c-%03d", 'A' + i / 1_000, i % 1_000)),
                                Collectors.joining("\n", "# Is it much?\n", ""))));
        Faults faults = new Faults();
        List<Rule> rules = new RuleParser(Texts.KNOWLEDGE, faults).parse(new TreeMap<>(files));
        faults.throwIfAny("rules");
        return rules;
    }

    @Test
    void filesOfTheLargestSize_fullOfFaults_endSoon() {
        Set<String> hostile = new HashSet<>();
        hostile.add("rule EXC-001  x\n  when the technique wroks by heat and so on without an end\n");
        hostile.add("\u0001\n");
        hostile.add("  and  the depth to the skin is less than limit heat.skin-gap.mim\n");
        hostile.add("rule\n");
        hostile.add("    because\n");
        for (String line : hostile) {
            String text = "# Is it?\n" + line.repeat((Bundle.LARGEST_FILE_BYTES - 100) / line.length());
            FaultyInput refused = assertTimeout(
                    SHORT,
                    () -> assertThrows(
                            FaultyInput.class, () -> Texts.book("rules/2-exclusions/hostile.rule", text, "EXC-900")));
            assertTrue(refused.faults().size() <= Faults.MOST + 1);
        }
    }

    @Test
    void knowledgeOfTheLargestSize_fullOfFaults_endsSoon() {
        Set<String> hostile =
                Set.of("x: 1\n", "a: {}\n", "- [", "{", "? ", "\"", "'", "&a ", "*a ", "!!a ", "k: |\n ", "# \n", "- ");
        for (String piece : hostile) {
            String text = piece.repeat((Bundle.LARGEST_FILE_BYTES - 100) / piece.length());
            Bundle bundle = with("knowledge/limits/hostile.yaml", text);
            FaultyInput refused =
                    assertTimeout(SHORT, () -> assertThrows(FaultyInput.class, () -> Knowledge.of(bundle)), piece);
            assertTrue(refused.getMessage().contains("knowledge/limits/hostile.yaml"), refused::getMessage);
        }
    }

    private static Bundle with(String path, String text) {
        Map<String, String> texts = new HashMap<>(Texts.SHIPPED.texts());
        texts.put(path, text);
        return Bundle.of(texts);
    }
}
