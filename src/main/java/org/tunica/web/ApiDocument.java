package org.tunica.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tunica.Contract;
import org.tunica.Tunica;
import org.tunica.casefile.JsonText;
import org.tunica.fhir.HookSchema;
import org.tunica.knowledge.YamlText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * What can be asked over HTTP, as OpenAPI 3.1: the paths as they are written down in {@code web/openapi.yaml}, the schemas as
 * the program prints them.
 */
final class ApiDocument {
    private static final String FILE = "/web/openapi.yaml";
    private static final String SCHEMAS = "#/components/schemas/";

    private ApiDocument() {}

    static ObjectNode of(Tunica tunica) {
        ObjectNode document = (ObjectNode) YamlText.parse(FILE, written());
        ObjectNode schemas = (ObjectNode) document.at("/components/schemas");
        for (Contract contract : Contract.values()) {
            put(schemas, contract.word(), tunica.schema(contract));
        }
        for (HookSchema schema : HookSchema.values()) {
            put(schemas, schema.word(), schema.text());
        }
        return document;
    }

    private static byte[] written() {
        try (InputStream in = ApiDocument.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file " + FILE);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A schema under its name; what it refers to in itself is found from the top of the document. */
    private static void put(ObjectNode schemas, String word, String schema) {
        String name = word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
        ObjectNode tree = (ObjectNode) JsonText.parseRecord(name, schema.getBytes(StandardCharsets.UTF_8));
        tree.remove(List.of("$schema", "$id"));
        rebase(tree, SCHEMAS + name);
        schemas.set(name, tree);
    }

    private static void rebase(JsonNode node, String place) {
        if (node instanceof ObjectNode object && object.path("$ref") instanceof StringNode reference) {
            object.put("$ref", place + reference.stringValue().substring(1));
        }
        node.forEach(child -> rebase(child, place));
    }

    /** What is written down about each address. */
    static List<ApiPage.Line> lines(ObjectNode document) {
        List<ApiPage.Line> lines = new ArrayList<>();
        document.get("paths")
                .properties()
                .forEach(path -> path.getValue().properties().stream()
                        .filter(operation -> operation.getValue().has("summary"))
                        .forEach(operation -> lines.add(new ApiPage.Line(
                                operation.getKey().toUpperCase(Locale.ROOT),
                                path.getKey(),
                                operation.getValue().get("summary").stringValue()))));
        return lines;
    }
}
