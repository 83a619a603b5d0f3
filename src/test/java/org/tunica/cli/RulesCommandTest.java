package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.Tunica;
import org.tunica.plan.Advice;
import org.tunica.rules.Rule;

class RulesCommandTest {
    private static final String SMALL_SAPHENOUS = "knowledge/demo/small-saphenous-near-sural-nerve.json";

    @TempDir
    Path folder;

    private record Run(int code, String out, String err) {
        static Run of(String... args) {
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int code = Main.run(args, new PrintWriter(out), new PrintWriter(err));
            return new Run(code, out.toString(), err.toString());
        }

        /** The output as one line, for texts that wrap. */
        String flat() {
            return out.replaceAll("\\s+", " ");
        }
    }

    @Test
    void explainTellsWhatSpoke_whatCameClose_andWhatOneNumberKeptQuiet() {
        Run run = Run.of("rules", "explain", SMALL_SAPHENOUS, "--option", "L1/laser-1470-radial");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.flat().contains("CAU-032"), run.out());
        assertTrue(run.flat().contains("+ the gap to the nerve is less than limit nerve.gap.min [2 mm; limit 5 mm]"));
        assertTrue(run.flat()
                .contains("EXC-028 (exclude; local): the nerve touches the vein that would be heated - the gap to the"
                        + " nerve is less than limit nerve.gap.touching [2 mm; limit 1 mm]"));
        assertTrue(run.flat().contains("Close to a limit:"));
        assertTrue(run.flat().contains(Advice.CAUTION));
        assertFalse(run.flat().contains("EXC-001"), "pregnancy is no near thing");
        assertTrue(Run.of("rules", "explain", SMALL_SAPHENOUS, "--option", "L1/laser-1470-radial", "--all")
                .flat()
                .contains("EXC-001"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "L1 | --option must be REF/TECHNIQUE",
                "L9/laser-1470-radial | the case has none of that name",
                "L1/laser-1470-radal | did you mean \"laser-1470-radial\"",
            })
    void explainNamesWhatIsWrongWithTheOption(String option, String message) {
        Run run = Run.of("rules", "explain", SMALL_SAPHENOUS, "--option", option);
        assertEquals(2, run.code());
        assertTrue(run.err().contains(message), run.err());
        assertEquals("", run.out());
    }

    @Test
    void showGivesTheSentenceWithLimitsSourcesAndChange() {
        Run run = Run.of("rules", "show", "CAU-022");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.flat().contains("and the relaxed lumen is more than limit trunk.non-thermal.max then caution"));
        assertTrue(run.flat().contains("Limit trunk.non-thermal.max = 6 mm, published (S-0050)"), run.out());
        assertTrue(run.flat().contains("Source S-0050: "));
        assertTrue(run.flat().contains("approved by nobody"));
        Run wrong = Run.of("rules", "show", "CAU-0222");
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("there is no such rule; did you mean \"CAU-022\""), wrong.err());
    }

    @Test
    void listHasALineForEveryRule_andFilters() {
        Run all = Run.of("rules", "list");
        for (Rule rule : Tunica.shipped().rules().rules()) {
            assertTrue(all.out().contains("\n" + rule.id()) || all.out().startsWith(rule.id()), rule.id());
        }
        Run some = Run.of("rules", "list", "--class", "contraindication", "--standing", "published");
        assertEquals(0, some.code(), some.err());
        assertTrue(some.out()
                .lines()
                .allMatch(line ->
                        line.isEmpty() || line.startsWith("EXC-") || line.startsWith(" ") || line.contains(" of ")));
    }

    @Test
    void checkFindsNoFaultInTheRulesShipped_andSaysWhatIsToJudge() {
        Run run = Run.of("rules", "check", ".");
        assertEquals(0, run.code(), run.err() + run.out());
        assertTrue(run.flat().contains(" rules: 0 faults, "), run.out());
        assertFalse(run.out().contains("FAULT"), run.out());
        assertFalse(run.out().contains("Neither gap nor overlap"), run.out());
    }

    @Test
    void checkTellsOfARuleThatNoScenarioShows_andOfOneThatCanNeverSpeak() throws IOException {
        Path copy = copyOfTheRules();
        Path rule = copy.resolve("rules/2-exclusions/pregnancy.rule");
        Files.writeString(
                rule,
                Files.readString(rule)
                        .replaceFirst(
                                "when the patient is pregnant",
                                "when the patient is pregnant\n  and  the sex is male\n  and  the sex is not male"));
        Path feature = copy.resolve("features/2-exclusions/no-stump.feature");
        Files.writeString(feature, Files.readString(feature).replace("| limit ", "| hit "));
        Files.delete(copy.resolve("features/2-exclusions/bedbound.feature"));
        Run run = Run.of("rules", "check", copy.toString());
        assertEquals(2, run.code(), run.err());
        assertTrue(run.flat().contains("FAULT, can never speak (1):"), run.out());
        assertTrue(run.flat().contains("FAULT, not shown by a scenario"), run.out());
    }

    @Test
    void checkListsEveryFaultOfTheFiles() throws IOException {
        Path copy = copyOfTheRules();
        Path rule = copy.resolve("rules/2-exclusions/pregnancy.rule");
        Files.writeString(rule, Files.readString(rule).replace("the patient is pregnant", "the patient is pregnat"));
        Run run = Run.of("rules", "check", copy.toString());
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertTrue(run.err().contains("rules/2-exclusions/pregnancy.rule:"), run.err());
        assertTrue(run.err().contains("the closest form is"), run.err());
        Run nowhere = Run.of("rules", "check", copy.resolve("nowhere").toString());
        assertEquals(2, nowhere.code());
        assertTrue(nowhere.err().contains("there is no such folder or archive"), nowhere.err());
    }

    @Test
    void diffTellsSentencesAndNumbersBeforeAndAfter() throws IOException {
        assertEquals(
                "Nothing differs in what the rules and the knowledge say.\n",
                Run.of("rules", "diff", ".", ".").out());
        Path copy = copyOfTheRules();
        Path limits = copy.resolve("knowledge/limits/distances.yaml");
        Files.writeString(
                limits, Files.readString(limits).replaceFirst("(heat.skin-gap.min:\\s+says: .*\\s+value: )5", "$16"));
        Run run = Run.of("rules", "diff", ".", copy.toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("heat.skin-gap.min"), run.out());
        assertTrue(run.out().contains("was 5 mm, is 6 mm"), run.out());
    }

    @Test
    void bookWritesThePagesAsMarkdownAndHtml() throws IOException {
        Path out = folder.resolve("book");
        Run run = Run.of("rules", "book", "--out", out.toString(), "--rules", ".", "--on", "2028-06-01");
        assertEquals(0, run.code(), run.err());
        for (String page : List.of("rule-book", "grammar", "hazard-log")) {
            assertTrue(Files.size(out.resolve(page + ".html")) > 10_000, page);
            assertTrue(Files.size(out.resolve(page + ".md")) > 10_000, page);
        }
        String book = Files.readString(out.resolve("rule-book.md"));
        Tunica.shipped().rules().rules().forEach(rule -> assertTrue(book.contains(rule.id()), rule.id()));
        Tunica.shipped().rules().limitsUsed().forEach(id -> assertTrue(book.contains(id), id));
    }

    private Path copyOfTheRules() throws IOException {
        for (String name : List.of("rules", "knowledge", "features")) {
            try (Stream<Path> walk = Files.walk(Path.of(name))) {
                for (Path file : walk.filter(Files::isRegularFile).toList()) {
                    Files.createDirectories(folder.resolve(file).getParent());
                    Files.copy(file, folder.resolve(file));
                }
            }
        }
        return folder;
    }
}
