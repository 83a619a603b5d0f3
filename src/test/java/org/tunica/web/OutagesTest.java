package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.store.Engine;
import org.tunica.store.Role;

/** A real database that fails before anybody answers: while a token is looked up, while a session is read. */
class OutagesTest {
    private static final int MOST_TIMES = 50;

    @TempDir
    private Path folder;

    @Test
    void nobodyIsLetIn_andAllAreToldToAskAgain() throws Exception {
        String place = Engine.POSTGRESQL.freshPlace(folder);
        RecordSystems records = ServerSettings.read(
                        "server.yaml",
                        ("format: tunica-server/1\n" + Served.signed(Keys.published(Keys.CURVED)))
                                .getBytes(StandardCharsets.UTF_8))
                .recordSystems();
        try (Clinic clinic = Clinic.at(place, settings -> settings.with(records))) {
            clinic.user("rosa", Role.SPECIALIST);
            Browser browser = clinic.signedIn("rosa");
            Engine.reachable(place, false);
            // each waits for a connection as long as it may, so all at once
            CompletableFuture<HttpResponse<String>> hook = later(() -> called(clinic, "/cds-services"));
            CompletableFuture<HttpResponse<String>> record = later(() -> called(clinic, "/fhir/metadata"));
            CompletableFuture<HttpResponse<String>> program = later(() -> browser.get("/api/cases"));
            HttpRequest.Builder asked = browser.at("/cases").header("Accept", "text/html");
            CompletableFuture<HttpResponse<String>> page = later(() -> browser.send(asked));
            toldToAskAgain(hook.get(), "application/problem+json");
            toldToAskAgain(record.get(), "application/fhir+json");
            assertTrue(record.get().body().contains("\"transient\""), record.get()::body);
            toldToAskAgain(program.get(), "application/problem+json");
            toldToAskAgain(page.get(), "text/html;charset=UTF-8");
            assertTrue(page.get().body().contains("licensed specialist decides"), page.get()::body);
            Engine.reachable(place, true);
            answeredAgain(() -> called(clinic, "/cds-services"));
            answeredAgain(() -> browser.get("/cases"));
        }
    }

    /** Asks again as it was told to: a connection used a moment ago is tried before it is found to be dead. */
    private static void answeredAgain(Callable<HttpResponse<String>> asking) throws Exception {
        int status = asking.call().statusCode();
        for (int times = 0; times < MOST_TIMES && status == 503; times++) {
            status = asking.call().statusCode();
        }
        assertEquals(200, status);
    }

    private static CompletableFuture<HttpResponse<String>> later(Callable<HttpResponse<String>> asking) {
        Supplier<HttpResponse<String>> asked = () -> {
            try {
                return asking.call();
            } catch (Exception e) {
                throw new CompletionException(e);
            }
        };
        return CompletableFuture.supplyAsync(asked, work -> new Thread(work).start());
    }

    private static void toldToAskAgain(HttpResponse<String> answer, String type) {
        assertEquals(503, answer.statusCode(), answer::body);
        assertEquals(type, answer.headers().firstValue("Content-Type").orElse(""), answer::body);
        assertTrue(answer.body().contains("ask again later"), answer::body);
        assertFalse(answer.body().contains("jdbc") || answer.body().contains("connection"), answer::body);
    }

    private static HttpResponse<String> called(Clinic clinic, String path) throws Exception {
        String token = Token.sound(Served.BASE + path, clinic.clock.instant()).signed();
        HttpRequest call = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + clinic.server.port() + path))
                .header("Authorization", "Bearer " + token)
                .build();
        return HttpClient.newHttpClient().send(call, HttpResponse.BodyHandlers.ofString());
    }
}
