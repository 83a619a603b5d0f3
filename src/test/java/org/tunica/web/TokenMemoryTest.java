package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.OutputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.store.Actor;
import org.tunica.store.Store;

/** A token that was used passes no second time, whatever happened to the server in between. */
class TokenMemoryTest {
    private static final String PATH = "/cds-services/vein-closure";
    private static final Actor SOMEBODY = new Actor("somebody");

    private final HttpClient client = HttpClient.newHttpClient();

    @TempDir
    private Path folder;

    @Test
    void serverStartedAnew_knowsTheTokensItSaw() throws Exception {
        String token;
        try (Clinic clinic = clinic("data")) {
            token = token(clinic.clock.instant(), "first");
            assertEquals(200, ask(clinic, token));
        }
        try (Clinic clinic = clinic("data")) {
            assertEquals(401, ask(clinic, token));
            assertEquals(200, ask(clinic, token(clinic.clock.instant(), "second")));
        }
    }

    /** A backup holds no tokens, so any of before may have been used. */
    @Test
    void restoredStore_takesTokensMadeSinceThen() throws Exception {
        Path archive = folder.resolve("backup.zip");
        Instant made;
        try (Clinic clinic = clinic("data")) {
            made = clinic.clock.instant();
            try (OutputStream to = Files.newOutputStream(archive)) {
                clinic.store.backUp(SOMEBODY, to);
            }
        }
        MovableClock clock = new MovableClock();
        clock.move(Duration.ofSeconds(30));
        try (Store store = Store.open(folder.resolve("restored").toString(), clock)) {
            store.restore(SOMEBODY, archive, Optional.empty());
        }
        try (Clinic clinic = clinic("restored")) {
            clinic.clock.move(Duration.ofSeconds(40));
            assertEquals(401, ask(clinic, token(made, "used before, perhaps")));
            assertEquals(401, ask(clinic, token(made.plusSeconds(29), "just before")));
            assertEquals(200, ask(clinic, token(made.plusSeconds(32), "since")));
        }
    }

    private Clinic clinic(String data) {
        RecordSystems records = ServerSettings.read(
                        "server.yaml",
                        ("format: tunica-server/1\n" + Served.signed(Keys.published(Keys.CURVED)))
                                .getBytes(StandardCharsets.UTF_8))
                .recordSystems();
        return Clinic.at(folder.resolve(data).toString(), settings -> settings.with(records));
    }

    private static String token(Instant made, String id) {
        return Token.sound(Served.BASE + PATH, made)
                .says(claims -> claims.jwtID(id))
                .signed();
    }

    private int ask(Clinic clinic, String token) throws Exception {
        HttpRequest call = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + clinic.server.port() + PATH))
                .header("Content-Type", "application/json")
                .header("Authorization", "Bearer " + token)
                .POST(HttpRequest.BodyPublishers.ofFile(Path.of("knowledge/demo/fhir/patient-view.json")))
                .build();
        return client.send(call, HttpResponse.BodyHandlers.ofString()).statusCode();
    }
}
