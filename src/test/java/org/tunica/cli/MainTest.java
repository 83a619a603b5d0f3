package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.CaseTree;
import org.tunica.Contract;
import org.tunica.Tunica;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.SettingAdvice;
import org.tunica.wording.SettingWords;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class MainTest {
    private static final String TRUNK = "knowledge/demo/straight-thigh-trunk.json";
    private static final String BOTH_LEGS = "knowledge/demo/both-legs-many-segments.json";

    @TempDir
    Path folder;

    static List<Path> demoFiles() {
        return CaseTree.demoFiles();
    }

    @Test
    void documentationExample_adviceForACase() {
        Run run = Run.of("advise", TRUNK);
        assertEquals(0, run.code());
        assertEquals("", run.err());
        assertTrue(run.out().startsWith("Case larkspur-01. DRAFT rules"), run.out());
        assertTrue(run.out().contains("Segment L1: LEFT leg, great saphenous, thigh\n====="), run.out());
        assertTrue(run.out().contains("\n  1   segmental RF, 7 cm element"), run.out());
        saysCaution(run.out());
    }

    @Test
    void advise_json() {
        Run run = Run.of("advise", "--json", TRUNK);
        JsonNode advice = new JsonMapper().readTree(run.out());
        assertEquals(0, run.code());
        assertEquals(Advice.FORMAT, advice.get("format").stringValue());
        assertEquals(Advice.CAUTION, advice.get("caution").stringValue());
        assertEquals(15, advice.get("segments").get(0).get("options").size());
    }

    @Test
    void advise_why_addsLimitsAndSources() {
        String brief = Run.of("advise", TRUNK).out();
        String why = Run.of("advise", "--why", TRUNK).out();
        assertFalse(brief.contains("Sources named above"));
        assertTrue(why.contains("\nLimits named above\n"));
        assertTrue(why.contains("\nSources named above\n"));
        assertTrue(why.length() > 2 * brief.length());
    }

    @Test
    void advise_saysHowFirmTheRankingIs() {
        String brief = Run.of("advise", "--width", "160", TRUNK).out().replaceAll("\\s+", " ");
        String why = Run.of("advise", "--width", "160", "--why", TRUNK).out().replaceAll("\\s+", " ");
        assertTrue(brief.contains(" How firm: first place held in "), brief);
        assertTrue(brief.contains("It would change with the weight "), brief);
        assertFalse(brief.contains("draws of values and weights"));
        assertTrue(why.contains("10000 draws of values and weights"), why);
        assertTrue(why.contains("first if "), why);
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 80, 160})
    void advise_width_isKept(int width) {
        Run run = Run.of("advise", "--why", "--width", Integer.toString(width), BOTH_LEGS);
        assertEquals(0, run.code());
        assertTrue(width(run.out()) <= width, run.out());
        assertTrue(width(run.out()) > width - 5, "the width is not used");
    }

    @Test
    void advise_width60_keepsTheLongestNames() throws IOException {
        String longest = "R" + "x".repeat(63);
        CaseTree tree = CaseTree.soundLeg().set("caseRef", longest).set("limbs.0.segments.0.ref", longest);
        Run run = Run.of("advise", "--width", "60", file("long.json", tree).toString());
        assertEquals(0, run.code());
        assertTrue(width(run.out()) <= 60, run.out());
    }

    @Test
    void advise_faultyCase_listsEveryFault() throws IOException {
        CaseTree tree = CaseTree.soundLeg()
                .set("patient.sex", "femal")
                .set("limbs.0.segments.0.lumenDiameterMm", 400)
                .set("remark", "hello");
        Path file = file("faulty.json", tree);
        Run run = Run.of("advise", file.toString());
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertEquals(
                file
                        + ": 3 faults\n"
                        + "  $.patient.sex: \"femal\" is not a known word; did you mean \"female\"?;"
                        + " known words: female, male, other\n"
                        + "  $.limbs[0].segments[0].lumenDiameterMm: must be 0.3 to 40 mm, is 400\n"
                        + "  $.remark: is not a field of this object",
                run.err().stripTrailing());
    }

    @Test
    void advise_standardInput() {
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream(CaseTree.soundLeg().bytes()));
            Run run = Run.of("advise", "-");
            assertEquals(0, run.code(), run.err());
            assertTrue(run.out().startsWith("Case sound-leg."), run.out());
        } finally {
            System.setIn(before);
        }
    }

    @Test
    void advise_notJson() throws IOException {
        Path file = Files.writeString(folder.resolve("text.json"), "hello");
        refuses(Run.of("advise", file.toString()), "is not readable JSON at line 1, column");
    }

    @Test
    void advise_missingFileOrFolder() {
        refuses(Run.of("advise", folder.resolve("none.json").toString()), "none.json: there is no such file");
        refuses(Run.of("advise", folder.toString()), "cannot be read");
        refuses(Run.of("advise", "a\u0000b"), "cannot be read");
    }

    @Test
    void wrongUsage() {
        refuses(Run.of("advise"), "Missing required parameter: 'CASE.json'");
        refuses(Run.of("advise", "--jsn", TRUNK), "Unknown option: '--jsn'");
        refuses(Run.of("advise", "--width", "wide", TRUNK), "--width");
        refuses(Run.of("advise", "--width", "59", TRUNK), "must be 60 to 160 columns, is 59");
        refuses(Run.of("advise", "--width", "161", TRUNK), "must be 60 to 160 columns, is 161");
        refuses(Run.of("advize", TRUNK), "Did you mean");
        refuses(
                Run.of("schema", "cse"),
                "must be one of case, advice, plan, delivered, followup, past, similar, audit, replay, is \"cse\"");
        refuses(Run.of("schema"), "Missing required parameter: 'CONTRACT'");
    }

    @Test
    void outputThatCannotBeWritten_isNoSuccess() {
        StringWriter err = new StringWriter();
        PrintWriter full = new PrintWriter(new Writer() {
            @Override
            public void write(char[] text, int from, int length) throws IOException {
                throw new IOException("the disk is full");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        });
        assertEquals(1, Main.run(new String[] {"schema", "case"}, full, new PrintWriter(err)));
        assertEquals("The output could not be written.", err.toString().strip());
    }

    @Test
    void schema_isThatOfTheFrontDoor() {
        Tunica tunica = Tunica.shipped();
        assertEquals(new Run(0, tunica.schema(Contract.CASE), ""), Run.of("schema", "case"));
        assertEquals(new Run(0, tunica.schema(Contract.ADVICE), ""), Run.of("schema", "advice"));
    }

    @Test
    void help() {
        Run help = Run.of("--help");
        assertEquals(0, help.code());
        assertTrue(help.out().contains("advise"), help.out());
        saysCaution(help.out());
        assertEquals(help, Run.of());
        saysCaution(Run.of("help", "advise").out());
        saysCaution(Run.of("advise", "--help").out());
        assertTrue(Run.of("--version").out().startsWith("tunica "));
    }

    @ParameterizedTest
    @MethodSource("demoFiles")
    void everyDemoCase_textIsPlainCautiousAndRepeatable(Path file) {
        Run run = Run.of("advise", "--why", file.toString());
        assertEquals(0, run.code(), run.err());
        saysCaution(run.out());
        assertTrue(run.out().chars().noneMatch(c -> c != '\n' && Character.isISOControl(c)), "no escape sequences");
        assertEquals(run, Run.of("advise", "--why", file.toString()));
    }

    @ParameterizedTest
    @MethodSource("demoFiles")
    void everyDemoCase_jsonIsCautiousAndRepeatable(Path file) {
        Run run = Run.of("advise", "--json", file.toString());
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains(Advice.CAUTION));
        assertEquals(run, Run.of("advise", "--json", file.toString()));
    }

    @ParameterizedTest
    @MethodSource("demoFiles")
    void everyDemoCase_linearEnergyNeverStandsWithoutPowerAndPullback(Path file) throws IOException {
        Tunica tunica = Tunica.shipped();
        Advice advice = tunica.advise(tunica.readCase("case", Files.readAllBytes(file)));
        List<OptionAdvice> options = advice.segments().stream()
                .flatMap(segment -> segment.options().stream())
                .toList();
        assertTrue(options.stream().anyMatch(option -> settings(option).contains("leedJPerCm")));
        for (OptionAdvice option : options) {
            if (settings(option).contains("leedJPerCm")) {
                assertTrue(
                        settings(option).containsAll(Set.of("powerW", "pullbackSecondsPerCm")),
                        option.technique() + " " + settings(option));
                option.settings().ranges().forEach(MainTest::holdsANumber);
                pullbackIsEnergyOverPower(option);
                inseparable(option);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demoFiles")
    void everyDemoCase_textGivesPowerAndPullbackBesideALinearEnergy(Path file) {
        String text = Run.of("advise", "--width", "160", file.toString()).out().replaceAll("\\s+", " ");
        for (int at = text.indexOf(" J/cm"); at >= 0; at = text.indexOf(" J/cm", at + 1)) {
            String before = text.substring(Math.max(0, at - 60), at);
            assertTrue(before.matches(".* W\\*?[;,] [^;,]* s/cm\\*?( \\(|; )[0-9. to]*"), before);
        }
    }

    /** Parts of a line may be told elsewhere when options share them; power, pullback and energy go together. */
    private static void inseparable(OptionAdvice option) {
        List<String> energies = SettingWords.parts(
                        option.settings(), Tunica.shipped().knowledge())
                .stream()
                .filter(part -> part.contains("J/cm"))
                .toList();
        assertEquals(1, energies.size(), energies::toString);
        assertTrue(energies.get(0).matches(".* W\\*?; .* s/cm\\*?; .* J/cm\\*?"), energies.get(0));
    }

    /** J/cm over W is s/cm, at both ends: least energy at most power is the quickest pullback. */
    private static void pullbackIsEnergyOverPower(OptionAdvice option) {
        SettingAdvice energy = setting(option, "leedJPerCm");
        SettingAdvice power = setting(option, "powerW");
        SettingAdvice pullback = setting(option, "pullbackSecondsPerCm");
        assertEquals(least(energy) / most(power), least(pullback), 0.01, option.technique());
        assertEquals(most(energy) / least(power), most(pullback), 0.01, option.technique());
    }

    private static SettingAdvice setting(OptionAdvice option, String id) {
        return option.settings().ranges().stream()
                .filter(setting -> setting.setting().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double least(SettingAdvice setting) {
        return setting.value().orElseGet(() -> setting.low().orElseThrow());
    }

    private static double most(SettingAdvice setting) {
        return setting.value().orElseGet(() -> setting.high().orElseThrow());
    }

    private static void holdsANumber(SettingAdvice setting) {
        assertTrue(
                setting.value().isPresent()
                        || setting.low().isPresent()
                        || setting.typical().isPresent()
                        || setting.high().isPresent(),
                setting.setting());
    }

    private static Set<String> settings(OptionAdvice option) {
        return option.settings().ranges().stream().map(SettingAdvice::setting).collect(Collectors.toSet());
    }

    private static void saysCaution(String out) {
        assertTrue(out.replaceAll("\\s+", " ").contains(Advice.CAUTION), out);
    }

    private static void refuses(Run run, String says) {
        assertEquals(2, run.code(), run.err());
        assertEquals("", run.out());
        assertTrue(run.err().contains(says), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
    }

    private static int width(String text) {
        return text.lines().mapToInt(String::length).max().orElse(0);
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    private Path file(String name, CaseTree tree) throws IOException {
        return Files.write(folder.resolve(name), tree.bytes());
    }

    /** What one start of the program gave. */
    private record Run(int code, String out, String err) {
        static Run of(String... args) {
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int code = Main.run(args, new PrintWriter(out), new PrintWriter(err));
            return new Run(code, out.toString(), err.toString());
        }
    }
}
