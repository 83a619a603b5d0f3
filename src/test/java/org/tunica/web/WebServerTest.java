package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.Contract;
import org.tunica.Tunica;
import org.tunica.casefile.JsonText;
import org.tunica.store.Store;

/** A real server on a free port of loopback, asked by the platform's own client. */
class WebServerTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final Path CASE = Path.of("knowledge/demo/pregnancy.json");
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @TempDir
    private static Path folder;

    private static Store store;
    private static WebServer server;

    @BeforeAll
    static void start() {
        Clock clock = Clock.systemUTC();
        store = Store.open(folder.toString(), clock);
        ServerSettings settings = ServerSettings.usual().with(new Listening("127.0.0.1", 0));
        server = WebServer.start(TUNICA, store, settings.withAdviceForAll(), clock);
    }

    @AfterAll
    static void stop() {
        server.close();
        store.close();
    }

    @Test
    void advice_isWhatTheFrontDoorSays() throws Exception {
        byte[] json = Files.readAllBytes(CASE);
        HttpResponse<String> answer = post("/api/advice", BodyPublishers.ofByteArray(json));
        assertEquals(200, answer.statusCode());
        assertEquals(TUNICA.toJson(TUNICA.advise(TUNICA.readCase("case", json))), answer.body());
        assertEquals(
                "application/json", answer.headers().firstValue("Content-Type").orElse(""));
    }

    @Test
    void faultyCase_getsEveryFaultWithItsPlace() throws Exception {
        HttpResponse<String> answer =
                post("/api/advice", BodyPublishers.ofString("{\"format\":\"tunica-case/1\",\"x\":1}"));
        assertEquals(422, answer.statusCode());
        assertEquals(
                "application/problem+json",
                answer.headers().firstValue("Content-Type").orElse(""));
        assertAll(
                () -> assertTrue(answer.body().contains("\"place\":\"$.x\""), answer.body()),
                () -> assertTrue(answer.body().contains("\"place\":\"$.caseRef\""), answer.body()));
    }

    @Test
    void bodyTooLong_isRefusedAnnouncedOrNot() throws Exception {
        byte[] half = new byte[JsonText.LARGEST_BYTES / 2 + 10];
        assertEquals(
                413,
                post("/api/advice", BodyPublishers.ofByteArrays(java.util.List.of(half, half)))
                        .statusCode());
        BodyPublisher unannounced = BodyPublishers.ofInputStream(() -> new SequenceInputStream(
                InputStream.nullInputStream(), new java.io.ByteArrayInputStream(new byte[2 * half.length])));
        assertEquals(413, post("/api/advice", unannounced).statusCode());
    }

    @Test
    void schema_isTheOneTheCommandPrints() throws Exception {
        assertEquals(TUNICA.schema(Contract.CASE), get("/api/schemas/case").body());
        assertEquals(404, get("/api/schemas/nothing").statusCode());
    }

    @Test
    void whatIsNotAllowed_isRefusedWithoutDetail() throws Exception {
        for (String path : new String[] {"/server/env", "/nothing", "/server", "/api/cases/../../server/env"}) {
            HttpResponse<String> answer = get(path);
            assertTrue(answer.statusCode() == 400 || answer.statusCode() == 401, path + " " + answer.statusCode());
            assertFalse(answer.body().contains("Exception"), answer.body());
        }
    }

    @Test
    void adviceWithoutSignIn_isForProgramsOnThisMachine() throws Exception {
        byte[] json = Files.readAllBytes(CASE);
        HttpRequest.Builder page = at("/api/advice")
                .header("Content-Type", "application/json")
                .header("Origin", "http://page.example")
                .POST(BodyPublishers.ofByteArray(json));
        assertEquals(401, CLIENT.send(page.build(), BodyHandlers.ofString()).statusCode());
    }

    @Test
    void metrics_areToldOnThisMachine() throws Exception {
        HttpResponse<String> metrics = get("/server/prometheus");
        assertEquals(200, metrics.statusCode());
        assertTrue(metrics.body().contains("tunica_sign_in_total{result=\"refused\"}"), metrics.body());
    }

    @Test
    void health_isTold() throws Exception {
        assertEquals(200, get("/server/health/readiness").statusCode());
        assertEquals(200, get("/server/health/liveness").statusCode());
    }

    @Test
    void answers_carryTheHeadersThatKeepBrowsersInBounds() throws Exception {
        HttpResponse<String> answer = get("/api/schemas/case");
        assertEquals(
                "nosniff", answer.headers().firstValue("X-Content-Type-Options").orElse(""));
        assertEquals("DENY", answer.headers().firstValue("X-Frame-Options").orElse(""));
        assertTrue(answer.headers().firstValue("Content-Security-Policy").isPresent());
        assertTrue(answer.headers().firstValue("Cache-Control").orElse("").contains("no-store"));
    }

    private static HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return CLIENT.send(at(path).build(), BodyHandlers.ofString());
    }

    private static HttpResponse<String> post(String path, BodyPublisher body) throws IOException, InterruptedException {
        return CLIENT.send(
                at(path).header("Content-Type", "application/json").POST(body).build(), BodyHandlers.ofString());
    }

    private static HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
    }
}
