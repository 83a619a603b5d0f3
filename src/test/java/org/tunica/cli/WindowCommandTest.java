package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.CaseTree;
import org.tunica.plan.Advice;
import tools.jackson.databind.node.ObjectNode;

class WindowCommandTest {
    private static final String TRUNK = "knowledge/demo/straight-thigh-trunk.json";

    @TempDir
    Path folder;

    private record Run(int code, String out, String err) {
        static Run of(String caseFile, String segment, String technique, String... more) {
            List<String> args =
                    new ArrayList<>(List.of("window", caseFile, "--segment", segment, "--technique", technique));
            args.addAll(List.of(more));
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int code = Main.run(args.toArray(String[]::new), new PrintWriter(out), new PrintWriter(err));
            return new Run(code, out.toString(), err.toString());
        }
    }

    @Test
    void documentationExample_aMapInLetters() {
        Run run = Run.of(TRUNK, "L1", "laser-1470-radial");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().startsWith("Segment L1, great saphenous, thigh: 1470 nm laser, radial fibre\n===="));
        assertTrue(run.out().contains("\n  12  .  d "), run.out());
        assertTrue(run.out().contains("Kc|Kc"), run.out());
        assertTrue(run.out().contains("@d"), run.out());
        assertTrue(run.out().contains("\n   W  4 "), run.out());
        assertTrue(run.out().replaceAll("\\s+", " ").contains(Advice.CAUTION), run.out());
    }

    @ParameterizedTest
    @CsvSource({
        "60, laser-1470-radial",
        "60, microwave",
        "60, rf-segmental-3cm",
        "60, steam",
        "100, rf-bipolar-pullback",
        "160, laser-1470-forward"
    })
    void text_keepsItsWidthInPlainAscii(int width, String technique) {
        Run run = Run.of(TRUNK, "L1", technique, "--width", Integer.toString(width));
        assertEquals(0, run.code(), run.err());
        run.out().lines().forEach(line -> assertTrue(line.length() <= width, line));
        assertTrue(run.out().lines().anyMatch(line -> line.length() > width - 8), run.out());
        assertTrue(run.out().chars().allMatch(letter -> letter == '\n' || letter >= ' ' && letter <= '~'));
    }

    @Test
    void map_marksOneSettingAndBothCeilings() {
        String out = Run.of(TRUNK, "L1", "rf-bipolar-pullback").out();
        List<String> map = out.lines()
                .filter(line -> line.matches(" *\\d+(\\.\\d)? .[Kd.].*"))
                .toList();
        assertTrue(map.size() >= 12, out);
        assertEquals(
                1, String.join("", map).chars().filter(letter -> letter == '@').count());
        assertTrue(
                map.stream().allMatch(line -> line.chars().filter(c -> c == '|').count() == 1), out);
        assertEquals(1, out.lines().filter(line -> line.matches(" +-{20,}")).count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"svg", "PNG"})
    void out_writesThePictureAndNothingElse(String ending) throws IOException {
        Path target = folder.resolve("window." + ending);
        Files.writeString(target, "an older picture");
        Run run = Run.of(TRUNK, "L1", "laser-1470-radial", "--out", target.toString(), "--width", "600");
        assertEquals(0, run.code(), run.err());
        assertEquals("", run.out());
        byte[] bytes = Files.readAllBytes(target);
        byte[] start = ending.equals("svg")
                ? "<?xml".getBytes(StandardCharsets.UTF_8)
                : new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r'};
        assertArrayEquals(start, Arrays.copyOf(bytes, start.length));
        assertEquals(List.of(target), files());
    }

    @Test
    void out_inAFolderThatIsNotThere() throws IOException {
        Path target = folder.resolve("none").resolve("window.svg");
        refused(Run.of(TRUNK, "L1", "steam", "--out", target.toString()), "there is no such folder");
        assertEquals(List.of(), files());
    }

    @Test
    void out_thatIsAFolder() throws IOException {
        Path target = Files.createDirectory(folder.resolve("window.svg"));
        refused(Run.of(TRUNK, "L1", "steam", "--out", target.toString()), "is a folder");
        assertEquals(List.of(target), files());
    }

    @Test
    void out_besideAnAttemptThatWasCutShort() throws IOException {
        Path target = folder.resolve("window.svg");
        Path half = Files.writeString(folder.resolve("window.svg.part"), "half a picture");
        refused(Run.of(TRUNK, "L1", "steam", "--out", target.toString()), "is left from an earlier attempt");
        assertEquals(List.of(half), files());
        assertEquals("half a picture", Files.readString(half));
    }

    @Test
    void out_withAnotherEnding() throws IOException {
        Path target = folder.resolve("window.pdf");
        refused(Run.of(TRUNK, "L1", "steam", "--out", target.toString()), "--out must end in .svg or .png, is");
        assertEquals(List.of(), files());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "L2; steam; did you mean \"L1\"?",
                "L1; laser-1470-radal; did you mean \"laser-1470-radial\"?",
                "L1; adhesive; is no heat device; those are laser-1470-forward, laser-1470-radial"
            })
    void unknownWords_areNamedWithTheNearest(String segment, String technique, String says) {
        refused(Run.of(TRUNK, segment, technique), says);
    }

    @Test
    void wallOrLumenNotRecorded_isNamed() throws IOException {
        refused(
                Run.of("knowledge/demo/missing-wall-thickness.json", "L1", "steam"),
                "segment L1.wallThicknessMm: is not recorded");
        CaseTree tree = CaseTree.demo("straight-thigh-trunk");
        segment(tree).remove("lumenDiameterMm");
        segment(tree).remove("wallThicknessMm");
        Run run = Run.of(written(tree), "L1", "steam");
        refused(run, "segment L1.wallThicknessMm: is not recorded");
        refused(run, "segment L1.lumenDiameterMm: is not recorded");
    }

    @Test
    void wallTheModelDoesNotAnswerFor_isRefused() throws IOException {
        CaseTree tree = CaseTree.demo("straight-thigh-trunk");
        segment(tree).put("lumenDiameterMm", 20);
        segment(tree).put("wallThicknessMm", 2);
        refused(Run.of(written(tree), "L1", "laser-1470-radial"), "the heat model answers for 0.15 to 2");
    }

    @ParameterizedTest
    @ValueSource(strings = {"59", "161", "wide"})
    void width_outsideItsRange(String width) {
        refused(Run.of(TRUNK, "L1", "steam", "--width", width), "--width");
    }

    @Test
    void width_ofThePictureOutsideItsRange() throws IOException {
        String target = folder.resolve("window.svg").toString();
        refused(Run.of(TRUNK, "L1", "steam", "--out", target, "--width", "120"), "--width must be 500 to 4000 pixels");
        assertEquals(List.of(), files());
    }

    private static void refused(Run run, String says) {
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertTrue(run.err().contains(says), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
    }

    private static ObjectNode segment(CaseTree tree) {
        return (ObjectNode) tree.root().get("limbs").get(0).get("segments").get(0);
    }

    private String written(CaseTree tree) throws IOException {
        Path file = Files.createTempDirectory(folder, "case").resolve("case.json");
        return Files.write(file, tree.bytes()).toString();
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }
}
