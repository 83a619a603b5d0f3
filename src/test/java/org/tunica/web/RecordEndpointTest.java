package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tunica.Cold;
import org.tunica.Tunica;
import org.tunica.fhir.OtherReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Operations on records over a real server; everything that comes back is held against the standard by another validator. */
class RecordEndpointTest {
    private static final JsonMapper JSON = new JsonMapper();

    private static Served served;

    @BeforeAll
    static void start() {
        served = Served.with(Served.unsigned());
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @Test
    void theAdvice_comesAsResources() {
        JsonNode bundle = askedUntilWhole();
        assertEquals(
                List.of("GuidanceResponse", "RequestGroup", "Provenance", "AuditEvent"),
                bundle.get("entry")
                        .valueStream()
                        .map(entry -> entry.at("/resource/resourceType").stringValue())
                        .toList());
        JsonNode guidance = bundle.at("/entry/0/resource");
        assertEquals("Patient/p21", guidance.at("/subject/reference").stringValue());
        assertTrue(guidance.at("/note/0/text").stringValue().contains("the licensed specialist decides"));
        assertEquals(
                "unsigned",
                bundle.at("/entry/3/resource/agent/0/who/identifier/value").stringValue());
    }

    /** A slow machine may need more than one asking; what is computed behind is not lost. */
    private static JsonNode askedUntilWhole() {
        JsonNode bundle = sound(200, served.post("/fhir/$closure-advice", record()));
        for (int times = 0; times < 30 && status(bundle).equals("in-progress"); times++) {
            bundle = sound(200, served.post("/fhir/$closure-advice", record()));
        }
        return bundle;
    }

    private static String status(JsonNode bundle) {
        return bundle.at("/entry/0/resource/status").stringValue();
    }

    @Test
    void beforeTheHeatIsComputed_nothingIsProposed() {
        String atOnce = "recordSystems:\n  site: knowledge/demo/fhir/site.yaml\n  calls: unsigned-for-tests\n"
                + "  recordWithinMs: 1\n";
        try (Served early = Served.with(Cold.tunica(), atOnce)) {
            JsonNode bundle = sound(200, early.post("/fhir/$closure-advice", record()));
            assertEquals("in-progress", status(bundle));
            assertFalse(bundle.toString().contains("RequestGroup"), bundle::toString);
            assertTrue(bundle.toString().contains("still being computed"), bundle::toString);
        }
    }

    @Test
    void theCase_comesAsItWasUnderstood() {
        JsonNode parameters = sound(200, served.post("/fhir/$closure-case", record()));
        byte[] json = Base64.getDecoder()
                .decode(parameters.at("/parameter/0/resource/data").stringValue());
        assertEquals("from-record", Tunica.shipped().readCase("case", json).caseRef());
        assertTrue(parameters
                .at("/parameter/1/resource/issue/0/diagnostics")
                .stringValue()
                .contains("not used"));
    }

    @Test
    void whatIsThere_isTold_andNothingElse() {
        JsonNode statement = sound(200, served.get("/fhir/metadata"));
        Set<String> operations = new TreeSet<>();
        statement.at("/rest/0/operation").forEach(operation -> {
            String id = operation.get("name").stringValue();
            operations.add("/fhir/$" + id);
            JsonNode definition = sound(200, served.get("/fhir/OperationDefinition/" + id));
            assertEquals(operation.get("definition"), definition.get("url"));
        });
        assertEquals(Set.of("/fhir/$closure-advice", "/fhir/$closure-case"), operations);
        assertEquals(1, statement.at("/rest/0/resource").size());
    }

    @Test
    void whatIsWrong_isAnOperationOutcome() {
        outcome(404, "not-found", served.get("/fhir/Patient/p21"));
        outcome(404, "not-found", served.get("/fhir/OperationDefinition/strange"));
        outcome(404, "not-found", served.get("/fhir"));
        outcome(405, "not-supported", served.get("/fhir/$closure-advice"));
        outcome(400, "invalid", served.post("/fhir/$closure-advice", "{".getBytes()));
        outcome(400, "invalid", served.post("/fhir/$closure-advice", "{\"resourceType\":\"Patient\"}".getBytes()));
        outcome(413, "too-long", served.post("/fhir/$closure-case", new byte[9_000_000]));
        outcome(
                415,
                "not-supported",
                served.send(served.at("/fhir/$closure-case")
                        .header("Content-Type", "application/xml")
                        .POST(BodyPublishers.ofString("<Bundle/>"))));
        String withoutScan = "{\"resourceType\":\"Bundle\",\"type\":\"collection\",\"entry\":[{\"resource\":"
                + "{\"resourceType\":\"Patient\",\"id\":\"p1\"}}]}";
        JsonNode said = outcome(
                400, "invalid", served.post("/fhir/$closure-advice", withoutScan.getBytes(StandardCharsets.UTF_8)));
        assertTrue(said.get("issue").size() > 1, said::toString);
    }

    @Test
    void withoutAToken_operationsAreRefused_andWhatIsThereIsStillTold() {
        try (Served strict = Served.with(Served.signed(Keys.published(Keys.CURVED)))) {
            outcome(401, "login", strict.post("/fhir/$closure-advice", record()));
            assertEquals(200, strict.get("/fhir/metadata").statusCode());
            String path = "/fhir/$closure-case";
            HttpResponse<String> answer = strict.send(strict.at(path)
                    .header("Content-Type", "application/fhir+json")
                    .header(
                            "Authorization",
                            "Bearer "
                                    + Token.sound(Served.BASE + path, Served.NOW)
                                            .signed())
                    .POST(BodyPublishers.ofByteArray(record())));
            sound(200, answer);
        }
    }

    private static JsonNode outcome(int status, String code, HttpResponse<String> answer) {
        JsonNode outcome = sound(status, answer);
        assertEquals("OperationOutcome", outcome.get("resourceType").stringValue());
        assertEquals(code, outcome.at("/issue/0/code").stringValue());
        return outcome;
    }

    private static JsonNode sound(int status, HttpResponse<String> answer) {
        assertEquals(status, answer.statusCode(), answer::body);
        assertTrue(answer.headers().firstValue("Content-Type").orElse("").startsWith("application/fhir+json"));
        assertEquals(List.of(), OtherReader.errors(answer.body()));
        return JSON.readTree(answer.body());
    }

    private static byte[] record() {
        try {
            return Files.readAllBytes(Path.of("knowledge/demo/fhir/record.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
