package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
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
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The published schemas and the reader must tell the same story. */
class JsonSchemasTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final Schema CASE = schema(TUNICA.caseSchema());
    private static final Schema ADVICE = schema(TUNICA.adviceSchema());
    private static final Schema PLAN = schema(TUNICA.planSchema());
    private static final Schema DELIVERED = schema(TUNICA.deliveredSchema());
    private static final JsonMapper JSON = new JsonMapper();

    /** Wrong nearly everywhere, by the kind of mistake. */
    private static final List<String> ODD_VALUES = List.of(
            "null",
            "true",
            "0",
            "-1",
            "1e9",
            "0.5",
            "\"\"",
            "\"none\"",
            "\"nonne\"",
            "[]",
            "{}",
            "[\"x\"]",
            "[{}]",
            "[7]");

    /** What a schema cannot see, as it looks at one value at a time. */
    private static final List<String> ONLY_THE_READER_SEES = List.of(
            "the straight part cannot be longer than lengthCm",
            "the wall cannot be thicker than the open lumen is wide",
            "a relaxed vein cannot be narrower than the same vein in spasm",
            "stands twice in the case",
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

    static List<Path> demoFiles() {
        return CaseTree.demoFiles();
    }

    @Test
    void schemas_areValidAgainstTheirOwnSchema() {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(List.of(), meta.validate(TUNICA.caseSchema(), InputFormat.JSON));
        assertEquals(List.of(), meta.validate(TUNICA.adviceSchema(), InputFormat.JSON));
        assertEquals(List.of(), meta.validate(TUNICA.planSchema(), InputFormat.JSON));
        assertEquals(List.of(), meta.validate(TUNICA.deliveredSchema(), InputFormat.JSON));
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
        List<CaseTree> changed = new ArrayList<>();
        CaseTree full = CaseTree.demo("both-legs-many-segments");
        for (String path : places(full)) {
            changed.add(full.copy().set(path, null));
            ODD_VALUES.forEach(value -> changed.add(full.copy().set(path, JSON.readTree(value))));
            changed.add(full.copy().set(path + "Extra", 1));
        }
        CaseFile.NUMBERS.forEach(path -> edges(full, path).forEach(changed::add));
        assertTrue(changed.size() > 800, "only " + changed.size() + " changes");
        changed.forEach(JsonSchemasTest::agree);
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
        assertEquals(List.of(), errors(DELIVERED, Delivered.demo(demo)));
    }

    /** As {@link #oneChange_schemaAndReaderAgree}, over every place of a full record of a delivery. */
    @ParameterizedTest
    @MethodSource("delivered")
    void oneChangeOfADelivery_schemaAndReaderAgree(String demo) {
        CaseTree full = Delivered.demo(demo);
        List<CaseTree> changed = new ArrayList<>();
        for (String path : places(full)) {
            changed.add(full.copy().set(path, null));
            ODD_VALUES.forEach(value -> changed.add(full.copy().set(path, JSON.readTree(value))));
            changed.add(full.copy().set(path + "Extra", 1));
        }
        assertTrue(changed.size() > 400, "only " + changed.size() + " changes");
        for (CaseTree tree : changed) {
            List<String> seen = Delivered.faults(tree).stream()
                    .filter(fault -> ONLY_THE_READER_SEES_OF_A_DELIVERY.stream().noneMatch(fault::contains))
                    .toList();
            List<?> errors = errors(DELIVERED, tree);
            assertEquals(seen.isEmpty(), errors.isEmpty(), () -> "reader " + seen + ", schema " + errors);
        }
    }

    private static List<?> errors(Schema schema, CaseTree tree) {
        return schema.validate(new String(tree.bytes(), StandardCharsets.UTF_8), InputFormat.JSON);
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

    private static void agree(CaseTree tree) {
        List<String> seen = readerFaults(tree).stream()
                .filter(fault -> ONLY_THE_READER_SEES.stream().noneMatch(fault::endsWith))
                .toList();
        List<?> errors = schemaErrors(tree);
        assertEquals(seen.isEmpty(), errors.isEmpty(), () -> "reader " + seen + ", schema " + errors);
    }

    private static boolean schemaAccepts(CaseTree tree) {
        return schemaErrors(tree).isEmpty();
    }

    private static boolean readerAccepts(CaseTree tree) {
        return readerFaults(tree).isEmpty();
    }

    private static List<?> schemaErrors(CaseTree tree) {
        return CASE.validate(new String(tree.bytes(), StandardCharsets.UTF_8), InputFormat.JSON);
    }

    private static List<String> readerFaults(CaseTree tree) {
        try {
            TUNICA.readCase("case", tree.bytes());
            return List.of();
        } catch (FaultyInput e) {
            return e.faults().stream().map(Fault::says).toList();
        }
    }

    /** Every field of the case and of the first entry of each list, by path. */
    private static List<String> places(CaseTree tree) {
        List<String> places = new ArrayList<>();
        collect(tree.root(), "", places);
        return places;
    }

    private static void collect(JsonNode node, String prefix, List<String> places) {
        if (node.isObject()) {
            node.propertyNames().forEach(name -> {
                places.add(prefix + name);
                collect(node.get(name), prefix + name + ".", places);
            });
        } else if (node.isArray() && !node.isEmpty()) {
            collect(node.get(0), prefix + "0.", places);
        }
    }

    private static Schema schema(String text) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text, InputFormat.JSON);
    }
}
