package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A schema and the reader of the same contract, held against each other.
 *
 * @param faults what the reader has to say of a tree; none when it accepts it
 * @param onlyTheReaderSees of its faults: what holds between values, or inside a notation
 */
record SchemaAgreement(Schema schema, Function<CaseTree, List<String>> faults, Predicate<String> onlyTheReaderSees) {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
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
            "\"C2\"",
            "\"C9\"",
            "[]",
            "{}",
            "[\"x\"]",
            "[{}]",
            "[7]");

    static Schema schema(String text) {
        return REGISTRY.getSchema(text, InputFormat.JSON);
    }

    static void isASchema(String text) {
        Schema meta = REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(List.of(), meta.validate(text, InputFormat.JSON));
    }

    static List<?> errors(Schema schema, CaseTree tree) {
        return schema.validate(new String(tree.bytes(), StandardCharsets.UTF_8), InputFormat.JSON);
    }

    /** The schema accepts a tree exactly when the reader does, but for what only the reader sees. */
    void holds(CaseTree tree) {
        List<String> seen =
                faults.apply(tree).stream().filter(onlyTheReaderSees.negate()).toList();
        List<?> errors = errors(schema, tree);
        assertEquals(seen.isEmpty(), errors.isEmpty(), () -> "reader " + seen + ", schema " + errors);
    }

    /** One change at a time over every place of a full tree. */
    void holdsAfterOneChange(CaseTree full, int atLeast) {
        List<CaseTree> changed = changes(full);
        assertTrue(changed.size() > atLeast, "only " + changed.size() + " changes");
        changed.forEach(this::holds);
    }

    private static List<CaseTree> changes(CaseTree full) {
        List<CaseTree> changed = new ArrayList<>();
        for (String path : places(full)) {
            changed.add(full.copy().set(path, null));
            ODD_VALUES.forEach(value -> changed.add(full.copy().set(path, JSON.readTree(value))));
            changed.add(full.copy().set(path + "Extra", 1));
        }
        return changed;
    }

    /** Every field of a tree and of the first entry of each list, by path. */
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
