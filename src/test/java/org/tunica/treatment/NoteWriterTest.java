package org.tunica.treatment;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tunica.treatment.Delivered.TUNICA;
import static org.tunica.treatment.Delivered.note;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.CaseTree;
import org.tunica.casefile.FaultyInput;
import org.tunica.paper.Block;
import org.tunica.paper.Document;
import org.tunica.session.SessionPlan;
import tools.jackson.databind.json.JsonMapper;

class NoteWriterTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String STRAIGHT = "straight-thigh-trunk";
    private static final String BOTH = "both-legs-many-segments";

    static List<String> demos() {
        return Delivered.DEMOS;
    }

    /** Every sentence of a section, as it is read aloud. */
    private static List<String> said(ProcedureNote note, String heading) {
        List<String> said = new ArrayList<>();
        for (Document.Section section : note.page().sections()) {
            if (section.heading().startsWith(heading)) {
                section.blocks().forEach(block -> said.addAll(said(block)));
            }
        }
        return said;
    }

    private static List<String> said(Block block) {
        if (block instanceof Block.Lines lines) {
            return lines.lines().stream()
                    .map(line -> line.label() + ": " + line.text())
                    .toList();
        }
        if (block instanceof Block.Table table) {
            return table.rows().stream().map(row -> String.join(" | ", row)).toList();
        }
        if (block instanceof Block.Points points) {
            return points.items();
        }
        if (block instanceof Block.Warning warning) {
            return List.of("! " + warning.text());
        }
        return block instanceof Block.Paragraph paragraph ? List.of(paragraph.text()) : List.of();
    }

    private static void contains(List<String> said, String sentence) {
        assertTrue(said.contains(sentence), () -> sentence + " is not among " + String.join("\n", said));
    }

    /** One laser stretch over the whole demo trunk. */
    private static CaseTree oneStretch(double powerW, double pullbackSPerCm) {
        return Delivered.demo(STRAIGHT)
                .set("totals", null)
                .set("segments.0.stretches", null)
                .set("segments.0.heat", null)
                .set("segments.0.heat.powerW", powerW)
                .set("segments.0.heat.pullbackSecondsPerCm", pullbackSPerCm);
    }

    @Test
    void documentationExample_theNoteReadAloud() {
        ProcedureNote note = note(STRAIGHT, Delivered.demo(STRAIGHT));
        assertEquals(
                List.of(
                        "! L1: stretch 2 (20 cm) may or may not have been killed through.",
                        "! L1: stretch 3 (8 cm) was probably not killed through."),
                said(note, "What to look at"));
        List<String> segment = said(note, "L1, LEFT great saphenous, thigh");
        contains(segment, "Technique: 1470 nm laser, radial fibre");
        contains(segment, "Access: vein great saphenous, level knee");
        contains(segment, "2 | 20 cm | 10 W | 7 s/cm * | 70 J/cm | 1400 J * | 140 s *");
        contains(segment, "Stretch 1: 10 W instead of 8 W, 8 s/cm instead of 9.5 s/cm, 80 J/cm instead of 76 J/cm.");
        contains(segment, "Tumescence 340 mL instead of 380 mL.");
        contains(segment, "Stretch 1 (10 cm) was probably killed through.");
        contains(segment, "Last scan: deep vein: seen open");
        contains(said(note, "Session"), "People: operator AK, nurse JT");
        contains(said(note, "Drugs"), "lidocaine | 350 mg | 5.15 mg/kg | 28 mg/kg | within the limit");
        contains(said(note, "Afterwards"), "Advice for the way home: given");
        assertEquals("DRAFT", note.page().mark());
    }

    @Test
    void whatIsNotRecorded_isSaidToBeMissing() {
        ProcedureNote note = note(
                STRAIGHT,
                CaseTree.of(("{\"format\":\"tunica-delivered/1\",\"caseRef\":\"larkspur-01\","
                                + "\"segments\":[{\"ref\":\"L1\",\"technique\":\"laser-1470-radial\"}]}")
                        .getBytes(StandardCharsets.UTF_8)));
        for (String label : List.of("Date", "People", "Consent", "Time-out", "Indication")) {
            contains(said(note, "Session"), label + ": not recorded");
        }
        contains(said(note, "L1"), "Length treated: not recorded");
        contains(said(note, "L1"), "Incidents: not recorded");
        contains(said(note, "L1"), "Last scan: deep vein: not recorded");
    }

    @Test
    void doseAboveItsLimit_isToldAndNotRefused() {
        CaseTree tree = Delivered.demo(BOTH);
        List<String> said = said(note(BOTH, tree), "What to look at");
        contains(
                said,
                "! More foam was given than the limit of a session allows: 11 mL, at most 10 mL"
                        + " (routine ceiling of foam in a session).");
        contains(
                said,
                "! Lidocaine of the session: above 15 mg/kg, the line at which a person confirms the dose"
                        + " (dose.tumescent.confirm).");
        tree.set("totals", null).set("segments.0.tumescent.volumeMl", 1200);
        assertTrue(said(note(BOTH, tree), "What to look at").stream()
                .anyMatch(says -> says.startsWith("! More lidocaine was given than the limit of a session allows: 31.4"
                        + " mg/kg, at most 28 mg/kg")));
    }

    /** Without adrenaline no source allows more than the plain label (S-0906): 300 mg, 68 kg. */
    @ParameterizedTest
    @CsvSource({"true, false", "false, true", ", true"})
    void lidocaineWithoutAdrenaline_keepsThePlainLabel(Boolean adrenaline, boolean over) {
        CaseTree tree = Delivered.demo(STRAIGHT).set("segments.0.tumescent.adrenaline", adrenaline);
        assertEquals(
                over,
                said(note(STRAIGHT, tree), "What to look at").stream()
                        .anyMatch(says -> says.startsWith("! More lidocaine without adrenaline was given")));
    }

    /** Outside the tumescence the label holds (S-0906): 7 mg/kg and 500 mg with adrenaline, 4.5 and 300 without; 68 kg. */
    @ParameterizedTest
    @CsvSource({"470, true, false", "480, true, true", "299, false, false", "301, false, true", "301, , true"})
    void lidocaineElsewhere_keepsTheLabel(double mg, Boolean adrenaline, boolean over) {
        CaseTree tree = Delivered.demo(STRAIGHT)
                .set("totals", null)
                .set("otherLidocaineMg", mg)
                .set("otherAdrenaline", adrenaline);
        assertEquals(
                over,
                said(note(STRAIGHT, tree), "What to look at").stream()
                        .anyMatch(says -> says.startsWith("! More lidocaine outside the tumescence was given")));
    }

    /** A product label, read in extracts (S-0904): 10 mL of liquid in a session, whatever the mass allows. */
    @ParameterizedTest
    @CsvSource({"10, within the limit", "10.1, OVER THE LIMIT"})
    void polidocanolAsLiquid_keepsTheVolumeOfItsLabel(double ml, String expected) {
        CaseTree tree = Delivered.demo(BOTH).set("totals", null);
        for (String field : List.of("gas", "gasParts", "foamMl")) {
            tree.set("segments.1.sclerosant." + field, null);
        }
        tree.set("segments.1.technique", "mechanochemical")
                .set("segments.1.sclerosant.percent", 0.5)
                .set("segments.1.sclerosant.liquidMl", ml);
        assertTrue(
                said(note(BOTH, tree), "Drugs").stream()
                        .anyMatch(says -> says.startsWith("polidocanol liquid | ") && says.endsWith(expected)),
                () -> said(note(BOTH, tree), "Drugs").toString());
    }

    @Test
    void drugThatIsPartlyUnknown_isNotAddedUp() {
        CaseTree tree = Delivered.demo(BOTH).set("segments.1.sclerosant.percent", null);
        List<String> said = said(note(BOTH, tree), "What to look at");
        contains(said, "! The polidocanol of the session cannot be added up: a part of it is not recorded.");
    }

    @Test
    void otherTechniqueThanPlanned_isSaid() {
        CaseTree tree = oneStretch(10, 8).set("segments.0.technique", "laser-1940-radial");
        contains(
                said(note(STRAIGHT, tree), "L1"),
                "1940 nm laser, radial fibre instead of 1470 nm laser, radial fibre.");
    }

    @ParameterizedTest
    @CsvSource({"2, true", "3, true", "3.1, false"})
    void littleEnergyAtTheLongestWavelength_isPointedOut(double pullbackSPerCm, boolean pointedOut) { // evidence I 19
        CaseTree tree = oneStretch(10, pullbackSPerCm).set("segments.0.technique", "laser-1940-radial");
        assertEquals(
                pointedOut,
                said(note(STRAIGHT, tree), "What to look at").stream()
                        .anyMatch(says -> says.contains("veins to reopen")));
    }

    /** More time at the same power, more power at the same time: never fewer draws with the wall dead. */
    @Test
    void lessEnergy_neverKillsMore() {
        double before = 0;
        for (double pullbackSPerCm : new double[] {1, 2, 4, 6, 8, 10, 12}) {
            double share = delayed(oneStretch(10, pullbackSPerCm));
            assertTrue(share >= before, pullbackSPerCm + " s/cm: " + share + " after " + before);
            before = share;
        }
        assertTrue(before > 0.9, "never killed: " + before);
        double weaker = 0;
        for (double powerW : new double[] {4, 6, 8, 10, 12}) {
            double share = delayed(oneStretch(powerW, 8));
            assertTrue(share >= weaker, powerW + " W: " + share + " after " + weaker);
            weaker = share;
        }
    }

    private static double delayed(CaseTree tree) {
        return note(STRAIGHT, tree).stretches().get(0).effect().delayedProbability();
    }

    @ParameterizedTest
    @ValueSource(strings = {"segments.0.position", "segments.0.tumescent", "segments.0.tumescent.chilled"})
    void whatIsNotRecorded_neverLooksBetter(String path) {
        for (String value : List.of("\"supine-head-down\"", "\"supine\"", "\"prone\"")) {
            CaseTree known = oneStretch(10, 8).set("segments.0.position", JSON.readTree(value));
            assertTrue(delayed(known.copy().set(path, null)) <= delayed(known), value + " without " + path);
        }
    }

    @Test
    void wallThatWasNotRecorded_cannotBeJudged() {
        SessionPlan plan = Delivered.plan(STRAIGHT);
        CaseTree tree = CaseTree.of(TUNICA.toJson(plan).getBytes(StandardCharsets.UTF_8))
                .set("caseFile.limbs.0.segments.0.wallThicknessMm", null);
        ProcedureNote note = TUNICA.treatments()
                .note(TUNICA.readPlan("plan", tree.bytes()), Delivered.read(Delivered.demo(STRAIGHT)));
        note.stretches().forEach(stretch -> assertEquals(Killed.CANNOT_BE_TOLD, stretch.killed()));
        contains(
                said(note, "What to look at"),
                "! L1: stretch 3 (8 cm) cannot be judged: whether it was killed through"
                        + " cannot be told, because the thickness of the wall was not recorded before.");
    }

    @Test
    void settingOutsideTheModel_cannotBeJudged() {
        ProcedureNote note = note(STRAIGHT, oneStretch(120, 8));
        assertEquals(Killed.CANNOT_BE_TOLD, note.stretches().get(0).killed());
        assertTrue(note.stretches().get(0).effect().silence().contains("powerW"));
    }

    @Test
    void segmentThatWasPlannedAndIsNotMentioned_isPointedOut() {
        CaseTree tree = CaseTree.of(("{\"format\":\"tunica-delivered/1\",\"caseRef\":\"larkspur-11\",\"segments\":"
                        + "[{\"ref\":\"R2\",\"notDone\":\"no time\"}]}")
                .getBytes(StandardCharsets.UTF_8));
        List<String> said = said(note(BOTH, tree), "What to look at");
        contains(said, "! R2: not done, no time");
        contains(said, "! L2: planned for this session (polidocanol foam), nothing is recorded of it.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            caseRef        | "larkspur-02" | $.caseRef: is "larkspur-02", the plan is of the case "larkspur-01"
            session        | 2             | $.session: is 2, the plan has 1 session
            segments.0.ref | "L2"          | $.segments[0].ref: "L2" is no segment of the case, only L1
            """)
    void recordOfAnotherPlan_isRefused(String path, String value, String fault) {
        CaseTree tree = Delivered.demo(STRAIGHT).set(path, JSON.readTree(value));
        FaultyInput refused = assertThrows(FaultyInput.class, () -> note(STRAIGHT, tree));
        assertTrue(refused.getMessage().contains(fault), refused::getMessage);
    }

    @ParameterizedTest
    @MethodSource("demos")
    void pdf_holdsWhatTheNoteSays_andEveryPageIsMarked(String demo) throws IOException {
        ProcedureNote note = note(demo, Delivered.demo(demo));
        byte[] pdf = TUNICA.toPdf(note.page());
        assertArrayEquals(pdf, TUNICA.toPdf(note(demo, Delivered.demo(demo)).page()));
        try (PDDocument read = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(read).replaceAll("\\s+", " ");
            said(note, "What to look at").stream()
                    .map(says -> says.replace("! ", ""))
                    .forEach(says -> assertTrue(unbroken(text).contains(unbroken(says)), () -> says + " in " + text));
            int pages = read.getNumberOfPages();
            assertTrue(pages >= 2 && pages <= 6, pages + " pages");
            for (int page = 1; page <= pages; page++) {
                assertTrue(text.contains("Page " + page + " of " + pages), text);
            }
            assertEquals(pages, text.split("DRAFT Procedure note, case", -1).length - 1);
        }
    }

    /** Without blanks: a page breaks its lines where it must. */
    private static String unbroken(String text) {
        return text.replaceAll("\\s", "");
    }

    @ParameterizedTest
    @MethodSource("demos")
    void html_standsAlone(String demo) {
        String html = TUNICA.toHtml(note(demo, Delivered.demo(demo)).page());
        assertTrue(html.startsWith("<!DOCTYPE html>"));
        assertFalse(html.contains("href") || html.contains("src="));
        assertTrue(html.contains("DRAFT"));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void planAsJson_comesBackAsItWas(String demo) {
        SessionPlan plan =
                TUNICA.plan(TUNICA.readCase("case", CaseTree.demo(demo).bytes()));
        SessionPlan read = TUNICA.readPlan("plan", TUNICA.toJson(plan).getBytes(StandardCharsets.UTF_8));
        assertEquals(plan, read);
        assertEquals(TUNICA.toJson(plan), TUNICA.toJson(read));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            format                        | "tunica-plan/2" | $.format: must be "tunica-plan/1"
            caseFile                      | null            | $.caseFile: must be given
            caseRef                       | "other"         | $.caseRef: is another case than that of caseFile
            caseFile.patient.weightKg     | "70"            | $.caseFile.patient.weightKg: must be a number
            sessions.0.steps.0.technique  | "laser"         | $.sessions[0].steps[0].technique: "laser" is not a known word
            sessions.0.number             | 1.5             | $.sessions[0].number: must be a whole number
            release                       | null            | $.release: must be given
            surplus                       | 1               | $.surplus
            """)
    void brokenPlan_isRefusedWithItsPlace(String path, String value, String fault) {
        CaseTree tree = CaseTree.of(TUNICA.toJson(Delivered.plan(STRAIGHT)).getBytes(StandardCharsets.UTF_8))
                .set(path, JSON.readTree(value));
        FaultyInput refused = assertThrows(FaultyInput.class, () -> TUNICA.readPlan("plan", tree.bytes()));
        assertTrue(refused.getMessage().contains(fault), refused::getMessage);
    }
}
