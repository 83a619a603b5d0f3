package org.tunica.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Segment;
import org.tunica.paper.Block;
import org.tunica.paper.Document;
import org.tunica.paper.Lettering;
import org.tunica.paper.Paper;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.SegmentAdvice;

/** The sheets of invented legs: readable at twelve, honest about numbers, silent about what to do. */
class PatientSheetTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final PatientSheet SHEETS = new PatientSheet(TUNICA.knowledge());
    private static final Advice SOUND = TUNICA.advise(read(CaseTree.soundLeg()));
    private static final double HIGHEST_GRADE = 7;
    private static final int LONGEST_SENTENCE = 30;

    /** Words of the trade that a patient need not know. */
    private static final List<String> JARGON = List.of(
            "saphenous",
            "reflux",
            "thromb",
            "embol",
            "catheter",
            "tumesc",
            "ablat",
            "scleros",
            "polidocanol",
            "duplex",
            "anaesth",
            "lumen",
            "junction",
            "paraesth",
            "phleb",
            "stenosis",
            "contraind",
            "hypersens",
            "cyanoacryl",
            "endoven");

    static Set<String> techniques() {
        return TUNICA.knowledge().techniqueIds();
    }

    @ParameterizedTest
    @MethodSource("techniques")
    void everyTechniqueReadsAtTwelve_forEveryVein(String technique) {
        for (Segment.Vein vein : Segment.Vein.values()) {
            List<String> texts = forPatients(sheet(technique, vein, OptionStanding.CAREFUL));
            double grade = ReadingGrade.of(texts);
            assertTrue(grade <= HIGHEST_GRADE, () -> technique + ", " + vein + ": grade " + grade);
            texts.stream()
                    .flatMap(text -> ReadingGrade.sentences(text).stream())
                    .forEach(sentence -> assertTrue(
                            ReadingGrade.words(sentence).size() <= LONGEST_SENTENCE, () -> "too long: " + sentence));
        }
    }

    /** A way on its own, without the general parts that could hide it. */
    @ParameterizedTest
    @MethodSource("techniques")
    void theWayAloneReadsAtTwelve(String technique) {
        var way = TUNICA.knowledge().plain().wayOf(technique);
        List<String> texts = Stream.of(
                        way.what(),
                        way.before(),
                        way.needles(),
                        way.position(),
                        way.time(),
                        way.after(),
                        way.may().says())
                .flatMap(List::stream)
                .toList();
        assertTrue(ReadingGrade.of(texts) <= HIGHEST_GRADE, () -> technique + ": " + ReadingGrade.of(texts));
    }

    @Test
    void theGradeIsReckonedAsPublished() {
        assertEquals(0.39 * 6 + 11.8 - 15.59, ReadingGrade.of(List.of("The cat sat on the mat.")), 1e-9);
        assertEquals(4, ReadingGrade.syllables("ultrasound") + ReadingGrade.syllables("the"));
        assertEquals(1, ReadingGrade.syllables("take"));
        assertEquals(3, ReadingGrade.syllables("100"));
        assertTrue(ReadingGrade.of(List.of(
                        "Endovenous thermal ablation necessitates perivenous tumescent anaesthesia and compression."))
                > 2 * HIGHEST_GRADE);
    }

    @ParameterizedTest
    @MethodSource("techniques")
    void noWordOfTheTradeIsLeftUnexplained(String technique) {
        String text = String.join(
                        " ", forPatients(sheet(technique, Segment.Vein.GREAT_SAPHENOUS, OptionStanding.SUITABLE)))
                .toLowerCase(Locale.ROOT);
        JARGON.forEach(word -> assertFalse(text.contains(word), () -> word + " in the sheet of " + technique));
    }

    @ParameterizedTest
    @MethodSource("techniques")
    void nothingIsRecommended(String technique) {
        String text = String.join(
                        " ", forPatients(sheet(technique, Segment.Vein.SMALL_SAPHENOUS, OptionStanding.PREFERRED)))
                .toLowerCase(Locale.ROOT);
        assertFalse(text.matches(".*(recommend|you should|better than|safer|the best way|preferred).*"), text);
    }

    @Test
    void theWaysStandInNoOrderOfRank() {
        String points = points(SHEETS.of(SOUND, Map.of()));
        List<String> names = TUNICA.knowledge().plain().ways().values().stream()
                .map(way -> way.name())
                .filter(points::contains)
                .toList();
        assertTrue(names.size() > 3, points);
        int last = -1;
        for (String name : names) {
            assertTrue(points.indexOf(name) > last, points);
            last = points.indexOf(name);
        }
        assertTrue(all(SHEETS.of(SOUND, Map.of()))
                .contains(TUNICA.knowledge().plain().sentence("sheet.order")));
    }

    @Test
    void whatIsChosenStandsAlone() {
        CaseFile sound = read(CaseTree.soundLeg());
        Document chosen =
                TUNICA.treatments().sheet(sound, Map.of(SOUND.segments().get(0).ref(), "laser-1470-radial"));
        assertEquals("heat from a laser", points(chosen));
        CaseFile inTheCase = read(CaseTree.soundLeg().set("limbs.0.segments.0.chosen", "adhesive"));
        assertEquals("glue", points(TUNICA.treatments().sheet(inTheCase, Map.of())));
        assertEquals(
                "heat from a laser",
                points(TUNICA.treatments()
                        .sheet(inTheCase, Map.of(SOUND.segments().get(0).ref(), "laser-1470-radial"))));
    }

    @ParameterizedTest
    @CsvSource({"CAREFUL, extra care", "MEASURE_FIRST, has to be looked at or measured"})
    void whatStandsWithCareOrLacksAMeasurementSaysSo(OptionStanding standing, String expected) {
        assertTrue(String.join(" ", all(sheet("steam", Segment.Vein.GREAT_SAPHENOUS, standing)))
                .contains(expected));
    }

    @Test
    void whatARuleExcludesIsNotHandedToAPatient() {
        CaseFile pregnant = read(CaseTree.soundLeg().set("patient.pregnant", true));
        String ref = SOUND.segments().get(0).ref();
        FaultyInput refused = assertThrows(
                FaultyInput.class, () -> TUNICA.treatments().sheet(pregnant, Map.of(ref, "laser-1470-radial")));
        assertTrue(refused.getMessage().contains("EXC-"), refused.getMessage());
        assertTrue(all(TUNICA.treatments().sheet(pregnant, Map.of()))
                .contains(TUNICA.knowledge().plain().sentence("sheet.none")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"steam", "microwave"})
    void whereNoFigureExistsTheSheetSaysSo(String technique) {
        List<String> texts = all(sheet(technique, Segment.Vein.TRIBUTARY, OptionStanding.SUITABLE));
        assertTrue(texts.stream().anyMatch(text -> text.contains("We found no good figures on how often this kind")));
        assertTrue(texts.stream().anyMatch(text -> text.contains("We found no good figures on how often harm")));
    }

    @ParameterizedTest
    @MethodSource("techniques")
    void aFigureOfSeveralVeinsIsToldOnce_andNoneIsLost(String technique) {
        List<Segment.Vein> veins = List.of(Segment.Vein.values());
        List<String> together = rows(sheet(technique, veins, OptionStanding.SUITABLE));
        assertEquals(Set.copyOf(together).size(), together.size(), together::toString);
        Set<String> apart = veins.stream()
                .flatMap(vein -> rows(sheet(technique, vein, OptionStanding.SUITABLE)).stream())
                .collect(Collectors.toSet());
        assertEquals(apart, Set.copyOf(together));
    }

    /** Two legs of which nothing was chosen: each way once, beside it exactly the veins it stands for, and with what care. */
    @Test
    void openVeinsStandTogether_andEachWayNamesItsVeins() throws IOException {
        Advice advice = TUNICA.advise(
                TUNICA.readCase("case", Files.readAllBytes(Path.of("knowledge/demo/both-legs-many-segments.json"))));
        List<Block> veins = SHEETS.of(advice, Map.of()).sections().get(1).blocks();
        Map<String, String> byWay = ((Block.Lines) veins.get(veins.size() - 1))
                .lines().stream().collect(Collectors.toMap(Block.Line::label, Block.Line::text));
        List<Picked> picked = advice.segments().stream()
                .map(segment -> Picked.of(segment, Optional.empty()))
                .toList();
        assertTrue(picked.size() > 2);
        TUNICA.knowledge().plain().ways().values().forEach(way -> {
            String said = byWay.getOrDefault(way.name(), "").replace(" (needs extra care in your case; ask why)", "!");
            Set<String> freely = Set.of(said.replaceFirst("(; )?[^;]*!$", "").split(", "));
            Set<String> carefully =
                    Set.of(said.endsWith("!") ? said.replaceAll("^.*; |!$", "").split(", ") : new String[0]);
            for (Picked one : picked) {
                boolean offered = !one.of(way).isEmpty();
                String ref = one.segment().ref();
                assertEquals(offered && !one.careful(way), freely.contains(ref), () -> ref + " in " + byWay);
                assertEquals(offered && one.careful(way), carefully.contains(ref), () -> ref + " in " + byWay);
            }
        });
        picked.forEach(one -> assertTrue(((Block.Lines) veins.get(0))
                .lines().stream()
                        .anyMatch(line -> line.label().equals(one.segment().ref()))));
    }

    /** What each study counted stands once for all its figures of that kind; no figure and no definition is lost. */
    @Test
    void theSourcesHoldEveryFigureThatWasTold() {
        Document sheet = SHEETS.of(SOUND, Map.of());
        Document.Section sources = sheet.sections().get(sheet.sections().size() - 1);
        assertTrue(sources.aside());
        Map<String, String> bySource = ((Block.Lines) sources.blocks().get(1))
                .lines().stream().collect(Collectors.toMap(Block.Line::label, Block.Line::text));
        List<List<String>> told = sheet.sections().stream()
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Table.class::isInstance)
                .flatMap(block -> ((Block.Table) block).rows().stream())
                .toList();
        assertTrue(told.size() > 20, told::toString);
        told.forEach(row -> {
            String source = bySource.get(row.get(1).replaceAll(",.*", ""));
            assertTrue(
                    source.matches("(?s).*" + Pattern.quote(row.get(0)) + ".* Counted: .*"), () -> row + ": " + source);
        });
    }

    /** What the tables of figures say. */
    private static List<String> rows(Document sheet) {
        return sheet.sections().stream()
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Table.class::isInstance)
                .flatMap(block -> texts(block).stream())
                .toList();
    }

    @Test
    void thePdfHoldsEverySentence_andTheSameSheetTheSameBytes() throws IOException {
        Document sheet = SHEETS.of(SOUND, Map.of());
        byte[] pdf = Paper.pdf(sheet, Lettering.LARGE);
        assertArrayEquals(pdf, Paper.pdf(SHEETS.of(SOUND, Map.of()), Lettering.LARGE));
        try (var document = Loader.loadPDF(pdf)) {
            String printed = flat(new PDFTextStripper().getText(document));
            List<String> lost = forPatients(sheet).stream()
                    .flatMap(text -> ReadingGrade.sentences(text).stream())
                    .filter(sentence -> !printed.contains(flat(sentence)))
                    .toList();
            // a page break may part a sentence by the lines that run on every page
            assertTrue(lost.size() <= document.getNumberOfPages(), lost::toString);
            assertTrue(printed.contains("DRAFT"));
            assertTrue(printed.contains(flat("Not for use on patients without local validation.")));
        }
        String page = Paper.xhtml(sheet, Lettering.LARGE);
        assertTrue(page.contains("DRAFT") && page.contains("class=\"large\""));
    }

    private static String flat(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC).replaceAll("\\s+", "");
    }

    private static CaseFile read(CaseTree tree) {
        return TUNICA.readCase("case", tree.bytes());
    }

    /** The sheet of a sound leg as if a technique stood so for a vein. */
    private static Document sheet(String technique, Segment.Vein vein, OptionStanding standing) {
        return sheet(technique, List.of(vein), standing);
    }

    private static Document sheet(String technique, List<Segment.Vein> veins, OptionStanding standing) {
        SegmentAdvice sound = SOUND.segments().get(0);
        OptionAdvice option = sound.options().stream()
                .filter(one -> one.technique().equals(technique))
                .findFirst()
                .orElseThrow();
        OptionAdvice standingSo = new OptionAdvice(
                option.rank(),
                option.firstPlaceShare(),
                option.technique(),
                option.says(),
                option.family(),
                standing,
                option.why(),
                option.score(),
                option.scoreTree(),
                option.tie(),
                option.settings(),
                option.predicted(),
                option.reasons(),
                option.cautions(),
                option.needs());
        List<SegmentAdvice> segments = veins.stream()
                .map(vein -> new SegmentAdvice(
                        sound.ref(),
                        sound.side(),
                        vein,
                        sound.level(),
                        sound.derived(),
                        List.of(standingSo),
                        sound.nearMisses(),
                        sound.ranking(),
                        sound.firmness(),
                        sound.hardCase(),
                        sound.similar()))
                .toList();
        Advice advice =
                new Advice(SOUND.format(), SOUND.caseRef(), SOUND.release(), SOUND.seed(), SOUND.caution(), segments);
        return SHEETS.of(advice, Map.of(sound.ref(), technique));
    }

    /** What a patient reads: all but the last section, which is for the specialist. */
    private static List<String> forPatients(Document sheet) {
        return texts(sheet.sections().subList(0, sheet.sections().size() - 1));
    }

    private static List<String> all(Document sheet) {
        return texts(sheet.sections());
    }

    private static String points(Document sheet) {
        return String.join(
                ", ",
                sheet.sections().get(1).blocks().stream()
                        .filter(Block.Points.class::isInstance)
                        .flatMap(block -> ((Block.Points) block).items().stream())
                        .toList());
    }

    private static List<String> texts(List<Document.Section> sections) {
        List<String> texts = new ArrayList<>();
        sections.forEach(section -> section.blocks().forEach(block -> texts.addAll(texts(block))));
        return texts;
    }

    private static List<String> texts(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            return List.of(paragraph.text());
        }
        if (block instanceof Block.Warning warning) {
            return List.of(warning.text());
        }
        if (block instanceof Block.Points points) {
            return points.items();
        }
        if (block instanceof Block.Lines lines) {
            return lines.lines().stream().map(Block.Line::text).toList();
        }
        if (block instanceof Block.Table table) {
            return table.rows().stream().map(row -> row.get(0)).toList();
        }
        return List.of();
    }
}
