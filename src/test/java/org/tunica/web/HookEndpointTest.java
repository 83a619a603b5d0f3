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
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.JsonText;
import org.tunica.store.FeedbackBook;
import org.tunica.store.GivenCard;
import org.tunica.store.Page;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Hooks over a real server: what comes back, with which status, and that nothing of a call is kept. */
class HookEndpointTest {
    private static final String SERVICE = "/cds-services/vein-closure";
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
    void calls_getTheirCards() {
        for (String hook : List.of("patient-view", "order-select", "order-sign")) {
            assertEquals("whole", askedUntilWhole(file(hook + ".json")));
        }
    }

    /** A slow machine may need more than one asking; each waits its time, and what is computed behind is not lost. */
    private static String askedUntilWhole(byte[] call) {
        String computed = "";
        for (int times = 0; times < 30 && !computed.equals("whole"); times++) {
            HttpResponse<String> answer = served.post(SERVICE, call);
            assertEquals(200, answer.statusCode(), answer::body);
            assertEquals("application/json", head(answer, "Content-Type"));
            JsonNode cards = JSON.readTree(answer.body()).get("cards");
            assertFalse(cards.isEmpty());
            computed = cards.findValue("computed").stringValue();
        }
        return computed;
    }

    @Test
    void nothingOfACall_isStored() {
        byte[] call = file("order-sign.json");
        String marked = new String(call, StandardCharsets.UTF_8).replace("p21", "planted-p21");
        Map<String, String> before = contents();
        assertEquals(
                200,
                served.post(SERVICE, marked.getBytes(StandardCharsets.UTF_8)).statusCode());
        assertEquals(
                200, served.post("/fhir/$closure-advice", file("record.json")).statusCode());
        assertEquals(before, contents());
        assertEquals(List.of(), served.store().feedback().newest(Page.newest(10)));
    }

    /** Every file of the store, byte by byte. */
    private static Map<String, String> contents() {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(served.folder())) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String bytes = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
                assertFalse(bytes.contains("planted-p21"), file::toString);
                contents.put(file.getFileName().toString(), bytes.hashCode() + " " + bytes.length());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        assertFalse(contents.isEmpty());
        return contents;
    }

    @Test
    void feedback_isKeptOnce() {
        try (Served own = Served.with(Served.unsigned())) {
            for (int times = 0; times < 2; times++) {
                HttpResponse<String> answer = own.post(SERVICE + "/feedback", file("feedback.json"));
                assertEquals(200, answer.statusCode(), answer::body);
                assertEquals("", answer.body());
            }
            List<FeedbackBook.Kept> kept = own.store().feedback().newest(Page.newest(10));
            assertEquals(3, kept.size());
            assertEquals("hook:unsigned", kept.get(0).stamp().by());
            assertTrue(kept.get(0).feedback().body().contains("patient-refuses"));
            assertTrue(own.store().audit().verify().sound());
        }
    }

    @Test
    void whatACardRestedOn_isKeptWithWhatAPersonDidWithItAndNotBefore() {
        try (Served own = Served.with(Served.unsigned())) {
            HttpResponse<String> answer = own.post(SERVICE, file("order-sign.json"));
            JsonNode card = JSON.readTree(answer.body()).get("cards").get(0);
            String id = card.get("uuid").stringValue();
            assertTrue(own.store().cards().one(id).isEmpty());
            String report = "{\"feedback\":[{\"card\":\"" + id + "\",\"outcome\":\"overridden\","
                    + "\"outcomeTimestamp\":\"2026-11-27T08:00:00Z\"}]}";
            assertEquals(
                    200,
                    own.post(SERVICE + "/feedback", report.getBytes(StandardCharsets.UTF_8))
                            .statusCode());
            GivenCard kept = own.store().cards().one(id).orElseThrow();
            JsonNode about = card.at("/extension/org.tunica.trace/about");
            assertEquals(about.path("technique").asString(""), kept.technique());
            assertEquals(about.path("rules").size(), kept.rules().size());
            assertTrue(own.store().audit().verify().sound());
        }
    }

    @Test
    void feedbackWithOneBadEntry_isNotKeptAtAll() {
        String feedback = new String(file("feedback.json"), StandardCharsets.UTF_8)
                .replace(
                        "\"outcome\": \"overridden\",\n      \"overrideReason\": {\n        \"system\"",
                        "\"outcome\": \"ignored\",\n      \"overrideReason\": {\n        \"system\"");
        HttpResponse<String> answer = served.post(SERVICE + "/feedback", feedback.getBytes(StandardCharsets.UTF_8));
        assertEquals(400, answer.statusCode());
        assertTrue(answer.body().contains("$.feedback[2].outcome"), answer.body());
        assertEquals(List.of(), served.store().feedback().newest(Page.newest(10)));
    }

    @Test
    void dataThatAreMissing_areNamed() {
        ObjectNode call = (ObjectNode) JSON.readTree(file("patient-view.json"));
        ((ObjectNode) call.get("prefetch")).remove("scan");
        HttpResponse<String> answer = served.post(SERVICE, call.toString().getBytes(StandardCharsets.UTF_8));
        assertEquals(412, answer.statusCode());
        JsonNode outcome = JSON.readTree(answer.body());
        assertEquals("OperationOutcome", outcome.get("resourceType").stringValue());
        assertEquals(
                "prefetch key scan was not sent",
                outcome.at("/issue/0/diagnostics").stringValue());
    }

    @Test
    void whatIsWrong_hasItsStatusAndAProblem() {
        problem(404, served.post("/cds-services/other", file("patient-view.json")));
        problem(404, served.post("/cds-services/other/feedback", file("feedback.json")));
        problem(404, served.get("/cds-services/vein-closure/strange/place"));
        problem(405, served.get(SERVICE));
        problem(400, served.post(SERVICE, "{".getBytes()));
        problem(400, served.post(SERVICE, new byte[0]));
        problem(400, served.post(SERVICE, "[]".getBytes()));
        problem(400, served.post(SERVICE, ("[".repeat(500)).getBytes()));
        HttpResponse<String> empty = served.post(SERVICE, "{}".getBytes());
        problem(400, empty);
        assertTrue(empty.body().contains("\"place\":\"$.hookInstance\""), empty.body());
        problem(
                415,
                served.send(served.at(SERVICE)
                        .header("Content-Type", "text/plain")
                        .POST(BodyPublishers.ofByteArray(file("patient-view.json")))));
    }

    @Test
    void aBodyTooLarge_isRefusedAnnouncedOrNot() {
        byte[] half = new byte[JsonText.LARGEST_RECORD_BYTES / 2 + 10];
        problem(
                413,
                served.send(served.at(SERVICE)
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofByteArrays(List.of(half, half)))));
        problem(413, served.post(SERVICE, new byte[2 * half.length]));
    }

    @Test
    void whereTheSiteHasSaidNothing_nothingIsOffered() {
        try (Served bare = Served.with("recordSystems: { calls: unsigned-for-tests }\n")) {
            assertEquals("{\"services\":[]}", bare.get("/cds-services").body());
            problem(404, bare.post(SERVICE, file("patient-view.json")));
        }
    }

    private static void problem(int status, HttpResponse<String> answer) {
        assertEquals(status, answer.statusCode(), answer::body);
        assertEquals("application/problem+json", head(answer, "Content-Type"));
        assertEquals(status, JSON.readTree(answer.body()).get("status").intValue());
    }

    private static String head(HttpResponse<String> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    private static byte[] file(String name) {
        try {
            return Files.readAllBytes(Path.of("knowledge/demo/fhir").resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
