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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.store.Engine;
import org.tunica.store.Role;

/** A real database that fails before anybody answers: while a token is looked up, while a session is read. */
class OutagesTest {
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
            Engine.POSTGRESQL.behindItsBack(
                    place, "alter table seen_tokens rename to away", "alter table sessions rename to away_too");
            toldToAskAgain(called(clinic, "/cds-services"), "application/problem+json");
            toldToAskAgain(called(clinic, "/fhir/metadata"), "application/fhir+json");
            toldToAskAgain(browser.get("/cases"), "application/problem+json");
            Engine.POSTGRESQL.behindItsBack(
                    place, "alter table away rename to seen_tokens", "alter table away_too rename to sessions");
            assertEquals(200, called(clinic, "/cds-services").statusCode());
            assertEquals(200, browser.get("/cases").statusCode());
        }
    }

    private static void toldToAskAgain(HttpResponse<String> answer, String type) {
        assertEquals(503, answer.statusCode(), answer::body);
        assertEquals(type, answer.headers().firstValue("Content-Type").orElse(""), answer::body);
        assertTrue(answer.body().contains("ask again later"), answer::body);
        assertFalse(answer.body().contains("seen_tokens") || answer.body().contains("sessions"), answer::body);
    }

    private static HttpResponse<String> called(Clinic clinic, String path) throws Exception {
        String token = Token.sound(Served.BASE + path, clinic.clock.instant()).signed();
        HttpRequest call = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + clinic.server.port() + path))
                .header("Authorization", "Bearer " + token)
                .build();
        return HttpClient.newHttpClient().send(call, HttpResponse.BodyHandlers.ofString());
    }
}
