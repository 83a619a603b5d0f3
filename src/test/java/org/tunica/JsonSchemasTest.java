package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.PlausibleRange;
import org.tunica.treatment.Delivered;
import tools.jackson.databind.json.JsonMapper;

/** The published schemas and the reader must tell the same story. */
class JsonSchemasTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final Schema CASE = SchemaAgreement.schema(TUNICA.schema(Contract.CASE));
    private static final Schema ADVICE = SchemaAgreement.schema(TUNICA.schema(Contract.ADVICE));
    private static final Schema PLAN = SchemaAgreement.schema(TUNICA.schema(Contract.PLAN));
    private static final Schema DELIVERED = SchemaAgreement.schema(TUNICA.schema(Contract.DELIVERED));
    private static final JsonMapper JSON = new JsonMapper();

    /** What a schema cannot see, as it looks at one value at a time. */
    private static final List<String> ONLY_THE_READER_SEES = List.of(
            "the straight part cannot be longer than lengthCm",
            "the wall cannot be thicker than the open lumen is wide",
            "a relaxed vein cannot be narrower than the same vein in spasm",
            "stands twice in the case",
            "a technique has one cost class",
            "side stands twice; put its segments together");

    /** The same of a record of a delivery: contradictions between its numbers. */
    private static final List<String> ONLY_THE_READER_SEES_OF_A_DELIVERY = List.of(
            "% is accepted",
            "says nothing without power or pullback",
            "stands twice",
            "does not go with the technique",
            "says that nothing was done",
            "must be given, or notDone",
            "more cannot be closed",
            "].lengthCm: must be given",
            "is no day of the calendar");

    private static final SchemaAgreement OF_A_CASE = new SchemaAgreement(
            CASE,
            JsonSchemasTest::readerFaults,
            says -> ONLY_THE_READER_SEES.stream().anyMatch(says::endsWith));
    private static final SchemaAgreement OF_A_DELIVERY = new SchemaAgreement(
            DELIVERED,
            Delivered::faults,
            fault -> ONLY_THE_READER_SEES_OF_A_DELIVERY.stream().anyMatch(fault::contains));

    static List<Path> demoFiles() {
        return CaseTree.demoFiles();
    }

    @Test
    void schemas_areValidAgainstTheirOwnSchema() {
        SchemaAgreement.isASchema(TUNICA.schema(Contract.CASE));
        SchemaAgreement.isASchema(TUNICA.schema(Contract.ADVICE));
        SchemaAgreement.isASchema(TUNICA.schema(Contract.PLAN));
        SchemaAgreement.isASchema(TUNICA.schema(Contract.DELIVERED));
    }

    @ParameterizedTest
    @MethodSource("demoFiles")
    void demoCase_keepsToTheSchema(Path file) throws IOException {
        assertEquals(List.of(), CASE.validate(Files.readString(file), InputFormat.JSON));
    }

    @ParameterizedTest
    @MethodSource("demoFiles")
    void adviceOfADemoCase_keepsToTheSchema(Path file) throws IOException {
        CaseFile caseFile = TUNICA.readCase("case", Files.readAllBytes(file));
        assertEquals(List.of(), ADVICE.validate(TUNICA.toJson(TUNICA.advise(caseFile)), InputFormat.JSON));
    }

    @ParameterizedTest
    @CsvSource({"format", "caseRef", "caution", "release", "segments"})
    void adviceWithoutItsParts_doesNot(String field) {
        CaseFile caseFile = TUNICA.readCase("case", CaseTree.soundLeg().bytes());
        CaseTree advice = CaseTree.of(TUNICA.toJson(TUNICA.advise(caseFile)).getBytes(StandardCharsets.UTF_8));
        assertFalse(ADVICE.validate(
                        new String(advice.set(field, null).bytes(), StandardCharsets.UTF_8), InputFormat.JSON)
                .isEmpty());
    }

    /**
     * One change at a time over every place of a full case: the schema accepts it exactly when the reader does, but for
     * {@link #ONLY_THE_READER_SEES}.
     */
    @Test
    void oneChange_schemaAndReaderAgree() {
        CaseTree full = CaseTree.demo("both-legs-many-segments");
        OF_A_CASE.holdsAfterOneChange(full, 800);
        CaseFile.NUMBERS.forEach(path -> edges(full, path).forEach(OF_A_CASE::holds));
    }

    @Test
    void oneChangeWithCostClasses_schemaAndReaderAgree() {
        OF_A_CASE.holdsAfterOneChange(
                CaseTree.demo("even-first-choices-with-cost-classes").set("patient.sex", "female"), 400);
    }

    @Test
    void faultOnlyTheReaderSees_techniqueInTwoCostClasses() {
        CaseTree tree = CaseTree.demo("even-first-choices-with-cost-classes")
                .set("room.costClasses.high", List.of("foam-polidocanol"));
        assertTrue(schemaAccepts(tree));
        assertFalse(readerAccepts(tree));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    a straight part longer than the whole | limbs.0.segments.0.straightCm               | 119
                    a wall thicker than its lumen         | limbs.0.segments.0.lumenDiameterMm          | 0.3
                    a reference twice                     | limbs.0.segments.0.ref                      | "R1"
                    a side twice                          | limbs.0.side                                | "right"
                    an outflow the history denies         | limbs.0.trunkIsMainOutflow                  | true
                    """)
    void faultOnlyTheReaderSees(String what, String path, String value) {
        CaseTree tree = CaseTree.demo("both-legs-many-segments").set(path, JSON.readTree(value));
        assertTrue(schemaAccepts(tree), what);
        assertFalse(readerAccepts(tree), what);
    }

    @Test
    void faultOnlyTheReaderSees_pregnantMan() {
        CaseTree tree = CaseTree.demo("pregnancy").set("patient.sex", "male");
        assertTrue(schemaAccepts(tree));
        assertFalse(readerAccepts(tree));
    }

    @Test
    void faultOnlyTheReaderSees_relaxedNarrowerThanInSpasm() {
        CaseTree tree = CaseTree.demo("vein-in-spasm").set("limbs.0.segments.0.measured.relaxedLumenDiameterMm", 1);
        assertTrue(schemaAccepts(tree));
        assertFalse(readerAccepts(tree));
    }

    @Test
    void mostSegments_andOneMore() {
        List<Map<String, String>> segments = new ArrayList<>();
        for (int i = 0; i < CaseFile.MOST_SEGMENTS; i++) {
            segments.add(Map.of("ref", "X" + i, "vein", "tributary", "level", "knee"));
        }
        CaseTree most = CaseTree.soundLeg().set("limbs.0.segments", segments);
        assertTrue(schemaAccepts(most) && readerAccepts(most));
        segments.add(Map.of("ref", "Y", "vein", "tributary", "level", "knee"));
        CaseTree oneMore = CaseTree.soundLeg().set("limbs.0.segments", segments);
        assertFalse(schemaAccepts(oneMore) || readerAccepts(oneMore));
    }

    @Test
    void techniqueThatIsNotChosen_mayBeNull() {
        CaseTree tree = CaseTree.soundLeg().set("limbs.0.segments.0.chosen", JSON.nullNode());
        assertTrue(schemaAccepts(tree) && readerAccepts(tree));
    }

    static List<String> delivered() {
        return Delivered.DEMOS;
    }

    @ParameterizedTest
    @MethodSource("demoFiles")
    void planOfADemoCase_keepsToTheSchema(Path file) throws IOException {
        CaseFile caseFile = TUNICA.readCase("case", Files.readAllBytes(file));
        assertEquals(List.of(), PLAN.validate(TUNICA.toJson(TUNICA.plan(caseFile)), InputFormat.JSON));
    }

    @ParameterizedTest
    @MethodSource("delivered")
    void demoDelivery_keepsToTheSchema(String demo) {
        assertEquals(List.of(), SchemaAgreement.errors(DELIVERED, Delivered.demo(demo)));
    }

    /** As {@link #oneChange_schemaAndReaderAgree}, over every place of a full record of a delivery. */
    @ParameterizedTest
    @MethodSource("delivered")
    void oneChangeOfADelivery_schemaAndReaderAgree(String demo) {
        OF_A_DELIVERY.holdsAfterOneChange(Delivered.demo(demo), 400);
    }

    /** Just inside and just outside the plausible range of a number. */
    private static Stream<CaseTree> edges(CaseTree full, String number) {
        PlausibleRange range = TUNICA.knowledge().plausibleRange(number).orElseThrow();
        String path = number.replace("limbs.segments.", "limbs.0.segments.0.")
                .replaceFirst("^limbs\\.(ankle|toe)", "limbs.0.$1")
                .replace("sclerosants.", "sclerosants.0.");
        double step = 1e-6;
        return Stream.of(range.min(), range.max(), range.min() - step, range.max() + step)
                .map(value -> full.copy().set(path, value));
    }

    private static boolean schemaAccepts(CaseTree tree) {
        return SchemaAgreement.errors(CASE, tree).isEmpty();
    }

    private static boolean readerAccepts(CaseTree tree) {
        return readerFaults(tree).isEmpty();
    }

    private static List<String> readerFaults(CaseTree tree) {
        try {
            TUNICA.readCase("case", tree.bytes());
            return List.of();
        } catch (FaultyInput e) {
            return e.faults().stream().map(Fault::says).toList();
        }
    }
}
