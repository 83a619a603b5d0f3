package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.swagger.v3.parser.OpenAPIV3Parser;
import io.swagger.v3.parser.core.models.ParseOptions;
import io.swagger.v3.parser.core.models.SwaggerParseResult;
import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tunica.Contract;
import org.tunica.Tunica;
import org.tunica.couch.CaseLine;
import org.tunica.fhir.HookSchema;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The document says of a running server what is there, no more and no less, with the schemas the program prints. */
class ApiDocumentTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final List<String> METHODS = List.of("get", "post", "put", "delete", "patch");

    private static Served served;
    private static String text;
    private static JsonNode document;

    @BeforeAll
    static void start() {
        served = Served.with(Served.unsigned());
        HttpResponse<String> answer = served.get("/api/openapi.json");
        assertEquals(200, answer.statusCode());
        assertEquals(
                "application/json", answer.headers().firstValue("Content-Type").orElse(""));
        text = answer.body();
        document = JSON.readTree(text);
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @Test
    void everyEndpointOfTheServer_isInIt_andNothingElse() {
        Set<String> told = new TreeSet<>();
        document.get("paths")
                .properties()
                .forEach(path -> METHODS.stream()
                        .filter(path.getValue()::has)
                        .forEach(method -> told.add(method.toUpperCase(Locale.ROOT) + " " + path.getKey())));
        assertEquals(served.endpoints(), told);
        assertTrue(told.size() > 10, told::toString);
    }

    @Test
    void everyOperation_saysWhatItDoes_andWhoMay() {
        document.get("paths")
                .properties()
                .forEach(path -> METHODS.stream()
                        .filter(path.getValue()::has)
                        .map(path.getValue()::get)
                        .forEach(operation -> {
                            assertFalse(operation.path("summary").asString("").isBlank(), path::toString);
                            assertTrue(operation.path("responses").size() > 0, path::toString);
                        }));
    }

    @Test
    void theSchemas_areThoseTheProgramPrints() {
        for (Contract contract : Contract.values()) {
            same(contract.word(), Tunica.shipped().schema(contract));
        }
        for (HookSchema schema : HookSchema.values()) {
            same(schema.word(), schema.text());
        }
    }

    private static void same(String word, String printed) {
        String name = word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
        String embedded = document.at("/components/schemas/" + name).toString();
        ObjectNode expected = (ObjectNode) JSON.readTree(printed);
        expected.remove(List.of("$schema", "$id"));
        assertEquals(expected, JSON.readTree(embedded.replace("#/components/schemas/" + name + "/", "#/")), name);
    }

    @Test
    void everyReference_leadsSomewhere() {
        List<String> references =
                document.findValues("$ref").stream().map(JsonNode::stringValue).toList();
        assertTrue(references.size() > 100);
        references.forEach(
                reference -> assertFalse(document.at(reference.substring(1)).isMissingNode(), reference));
    }

    @Test
    void theLinesOfLists_areDescribedAsTheyAre() {
        described("CaseLine", CaseLine.class);
        described("DocumentLine", DocumentLine.class);
        described("UserLine", UserLine.class);
        described("ChangeLine", ChangeLine.class);
        described("FeedbackLine", FeedbackLine.class);
        described("Handed", UserLine.Handed.class);
        described("Session", SessionController.Session.class);
    }

    private static void described(String name, Class<?> line) {
        Set<String> components = Arrays.stream(line.getRecordComponents())
                .map(one -> one.getName())
                .collect(Collectors.toSet());
        assertEquals(
                components,
                Set.copyOf(document.at("/components/schemas/" + name + "/properties")
                        .propertyNames()));
    }

    /** A reader of OpenAPI that is not ours. */
    @Test
    void anotherReader_findsNothingWrong() {
        ParseOptions options = new ParseOptions();
        options.setResolve(false);
        SwaggerParseResult read = new OpenAPIV3Parser().readContents(text, List.of(), options);
        assertEquals(List.of(), read.getMessages());
        assertEquals("3.1.0", read.getOpenAPI().getOpenapi());
        assertEquals(document.get("paths").size(), read.getOpenAPI().getPaths().size());
    }

    @Test
    void thePage_listsThemWithoutAnyScript() {
        HttpResponse<String> page = served.get("/api");
        assertEquals(200, page.statusCode());
        assertTrue(page.body().contains("<code>/cds-services/{id}/feedback</code>"), page.body());
        assertTrue(page.body().contains("/api/openapi.json"), page.body());
        assertTrue(page.body().contains("the licensed specialist decides"), page.body());
        assertFalse(page.body().contains("<script") || page.body().contains("style="), page.body());
    }
}
