package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.PlausibleRange;
import org.tunica.treatment.FollowUp;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The schema of a follow-up and its reader tell the same story. */
class FollowUpSchemaTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final JsonMapper JSON = new JsonMapper();
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema SCHEMA = REGISTRY.getSchema(TUNICA.followUpSchema(), InputFormat.JSON);
    private static final List<String> ODD_VALUES = List.of(
            "null",
            "true",
            "0",
            "-1",
            "1e9",
            "0.5",
            "\"\"",
            "\"none\"",
            "\"C2\"",
            "\"C9\"",
            "[]",
            "{}",
            "[\"x\"]",
            "[{}]",
            "[7]");

    /** What a schema cannot see: things that hold between values, and the inside of a notation. */
    private static final Pattern ONLY_THE_READER_SEES =
            Pattern.compile("\\$.*\\.(ceap|ceapBefore): (?!must be a text).*"
                    + "|.*(no more can be open than was treated|cannot reflux|into-deep-vein only|fills some of it"
                    + "|must be later than the visit before it, on day -?\\d+|stands twice in the (visit|follow-up)"
                    + "|put its segments together|one scale says death and the other does not)"
                    + "|\\$.*visits\\[\\d+\\].*\\.ref: .* is not a known word.*");

    @Test
    void itIsASchema() {
        Schema meta = REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(List.of(), meta.validate(TUNICA.followUpSchema(), InputFormat.JSON));
    }

    @Test
    void theDemoKeepsToIt() {
        assertEquals(List.of(), faults(demo()));
        assertEquals(List.of(), errors(demo()));
    }

    /** One change at a time over every place of a full follow-up. */
    @Test
    void oneChange_schemaAndReaderAgree() {
        CaseTree full = demo();
        List<CaseTree> changed = new ArrayList<>();
        for (String path : places(full)) {
            changed.add(full.copy().set(path, null));
            ODD_VALUES.forEach(value -> changed.add(full.copy().set(path, JSON.readTree(value))));
            changed.add(full.copy().set(path + "Extra", 1));
        }
        assertTrue(changed.size() > 500, "only " + changed.size() + " changes");
        changed.forEach(FollowUpSchemaTest::agree);
    }

    @Test
    void theEdgesOfEveryNumber() {
        for (String number : FollowUp.NUMBERS) {
            PlausibleRange range = TUNICA.knowledge().plausibleRange(number).orElseThrow();
            String path = number.equals("followup.vcss")
                    ? "limbs.0.vcssBefore.pain"
                    : number.replace("followup.limbs.", "limbs.0.")
                            .replace("treated.", "treated.0.")
                            .replace("visits.", "visits.0.")
                            .replace("segments.", "segments.0.");
            for (double value : new double[] {range.min(), range.max(), range.min() - 1, range.max() + 1}) {
                agree(demo().set(path, value));
            }
            assertTrue(!faults(demo().set(path, range.max() + 1)).isEmpty(), number);
            assertTrue(!faults(demo().set(path, range.min() - 1)).isEmpty(), number);
        }
    }

    @Test
    void everyFaultAtOnce() {
        CaseTree tree = demo().set("caseRef", "two words")
                .set("limbs.0.side", "middle")
                .set("limbs.0.ceapBefore", "C9,Ex")
                .set("limbs.0.vcssBefore.pain", 4)
                .set("limbs.0.visits.0.painOfTen", 11)
                .set("limbs.0.visits.0.segments.0.clot", "small")
                .set("limbs.0.visits.0.segments.0.again", "lazer");
        assertTrue(faults(tree).size() >= 8, () -> faults(tree).toString());
    }

    private static void agree(CaseTree tree) {
        List<String> seen = faults(tree).stream()
                .filter(fault -> !ONLY_THE_READER_SEES.matcher(fault).matches())
                .toList();
        List<?> errors = errors(tree);
        assertEquals(seen.isEmpty(), errors.isEmpty(), () -> "reader " + seen + ", schema " + errors);
    }

    private static List<?> errors(CaseTree tree) {
        return SCHEMA.validate(new String(tree.bytes(), StandardCharsets.UTF_8), InputFormat.JSON);
    }

    private static List<String> faults(CaseTree tree) {
        try {
            FollowUp.read("follow-up", tree.bytes(), TUNICA.knowledge());
            return List.of();
        } catch (FaultyInput e) {
            return e.faults().stream().map(Fault::toString).toList();
        }
    }

    private static CaseTree demo() {
        try {
            return CaseTree.of(Files.readAllBytes(Path.of("knowledge/demo/follow-up/both-legs-many-segments.json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

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
}
