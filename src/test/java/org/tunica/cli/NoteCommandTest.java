package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.plan.Advice;
import org.tunica.treatment.Delivered;

class NoteCommandTest {
    private static final String DELIVERED = "knowledge/demo/delivered/straight-thigh-trunk.json";

    @TempDir
    Path folder;

    private Path plan = Path.of("");

    private record Run(int code, String out, String err) {}

    @BeforeEach
    void planTheDemo() throws IOException {
        plan = Files.writeString(
                folder.resolve("plan.json"), Delivered.TUNICA.toJson(Delivered.plan("straight-thigh-trunk")));
    }

    private Run note(String delivered, String... more) {
        List<String> args = new ArrayList<>(List.of("note", plan.toString(), delivered));
        args.addAll(List.of(more));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(args.toArray(String[]::new), new PrintWriter(out), new PrintWriter(err));
        return new Run(code, out.toString(), err.toString());
    }

    @Test
    void documentationExample_theNoteAsText() {
        Run run = note(DELIVERED, "--width", "110");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().startsWith("DRAFT. Procedure note, case larkspur-01\n"), run.out());
        assertTrue(run.out().replaceAll("\\s+", " ").contains(Advice.CAUTION), run.out());
        assertTrue(run.out().contains("\n  ! L1: stretch 3 (8 cm) was probably not killed through.\n"), run.out());
        assertTrue(
                run.out().contains("\n  3        8 cm    10 W   2.5 s/cm  25 J/cm *      200 J *   20 s *\n"),
                run.out());
    }

    @Test
    void aPlanThatCallsItsRulesSigned_isBelievedOnlyWhereThatReleaseIsAtHand() throws IOException {
        String json = Files.readString(plan);
        String claimed = json.replace("\"state\" : \"draft\"", "\"state\" : \"active\"");
        assertNotEquals(json, claimed);
        Files.writeString(plan, claimed);
        Run run = note(DELIVERED);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().startsWith("DRAFT. Procedure note"), run.out());
        assertTrue(run.err().contains("That release is not at hand here"), run.err());
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 80, 110, 160})
    void text_keepsItsWidth(int width) {
        note(DELIVERED, "--width", Integer.toString(width))
                .out()
                .lines()
                .forEach(line -> assertTrue(line.length() <= width, line));
    }

    @Test
    void html_toTheScreenAndToAFileIsTheSame() throws IOException {
        Path file = folder.resolve("note.html");
        String printed = note(DELIVERED, "--format", "html").out();
        assertEquals(
                0, note(DELIVERED, "--format", "html", "--out", file.toString()).code());
        assertEquals(printed, Files.readString(file));
        assertTrue(printed.startsWith("<!DOCTYPE html>"), printed);
    }

    @Test
    void pdf_isWrittenToAFile() throws IOException {
        Path file = folder.resolve("note.pdf");
        Run run = note(DELIVERED, "--format", "pdf", "--out", file.toString());
        assertEquals(0, run.code(), run.err());
        assertEquals("", run.out());
        try (PDDocument read = Loader.loadPDF(Files.readAllBytes(file))) {
            assertEquals(2, read.getNumberOfPages());
        }
    }

    @Test
    void pdfWithoutAFile_isRefused() {
        Run run = note(DELIVERED, "--format", "pdf");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("--format pdf needs --out FILE"), run.err());
    }

    @Test
    void recordThatContradictsItself_isRefusedWithBothNumbers_andNothingIsWritten() throws IOException {
        Path wrong = Files.write(
                folder.resolve("wrong.json"),
                Delivered.demo("straight-thigh-trunk")
                        .set("segments.0.stretches.0.totalEnergyJ", 900)
                        .bytes());
        Path file = folder.resolve("note.html");
        Run run = note(wrong.toString(), "--format", "html", "--out", file.toString());
        assertEquals(2, run.code());
        assertTrue(
                run.err()
                        .contains("$.segments[0].stretches[0]: the energy of 900 J differs from power x time,"
                                + " 10 W x 80 s = 800 J, by 12.5 %"),
                run.err());
        assertFalse(Files.exists(file));
    }

    @Test
    void hostileText_isPrintedAsItStands() throws IOException {
        Path hostile = Files.write(
                folder.resolve("hostile.json"),
                Delivered.demo("straight-thigh-trunk")
                        .set("indication", "<script>alert(1)</script> & \u202e \"x\"")
                        .bytes());
        String html = note(hostile.toString(), "--format", "html").out();
        assertTrue(html.contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; \\u202e &quot;x&quot;"), html);
        assertFalse(html.contains("<script"), html);
        String text = note(hostile.toString()).out();
        assertFalse(text.contains("\u202e"), text);
        assertTrue(new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8).contains("<script>"));
    }

    @Test
    void casePutInPlaceOfThePlan_isNamedAsSuch() throws IOException {
        plan = Path.of("knowledge/demo/straight-thigh-trunk.json");
        Run run = note(DELIVERED);
        assertEquals(2, run.code());
        assertTrue(run.err().contains("$.format: must be \"tunica-plan/1\""), run.err());
    }
}
