package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.ServerKeys;
import org.tunica.casefile.FaultyInput;
import org.tunica.store.Role;

/** What stands between the server and a network, asked over real sockets. */
class ProtectionTest {
    @TempDir
    private Path folder;

    @Test
    void addressOthersCanReach_isRefusedWithoutProtection() {
        FaultyInput refused =
                assertThrows(FaultyInput.class, () -> open(settings -> settings.with(new Listening("0.0.0.0", 0))));
        assertTrue(refused.getMessage().contains("would cross the network in the clear"), refused.getMessage());
    }

    @Test
    void ownNamesAlone_areAnswered() throws Exception {
        try (Clinic clinic = open(ProtectionTest::named)) {
            for (String own : List.of("localhost", "127.0.0.1", "localhost:99", "[::1]", "tunica.clinic.example")) {
                assertEquals("HTTP/1.1 200", status(clinic, "/sign-in", "Host: " + own), own);
            }
            for (String other : List.of(
                    "evil.example",
                    "127.0.0.1.evil.example",
                    "localhost.evil.example",
                    "10.0.0.1",
                    "tunica.clinic.example.evil")) {
                assertEquals("HTTP/1.1 400", status(clinic, "/sign-in", "Host: " + other), other);
            }
        }
    }

    @Test
    void forwardedWords_countFromNobodyUnasked() throws Exception {
        try (Clinic clinic = open(settings -> settings)) {
            assertEquals(
                    "HTTP/1.1 400", status(clinic, "/sign-in", "Host: evil.example", "X-Forwarded-Host: localhost"));
            String page = raw(clinic, "/sign-in", "Host: localhost", "X-Forwarded-Proto: https");
            assertFalse(page.contains("Strict-Transport-Security"), page);
            assertEquals(
                    "HTTP/1.1 200",
                    status(clinic, "/server/prometheus", "Host: localhost", "X-Forwarded-For: 192.0.2.9"));
        }
    }

    @Test
    void trustedProxy_speaksForItsClients() throws Exception {
        try (Clinic clinic = open(ProtectionTest::behindProxy)) {
            String host = "Host: tunica.clinic.example";
            String far = "X-Forwarded-For: 192.0.2.9";
            String page = raw(clinic, "/sign-in", host, far, "X-Forwarded-Proto: https");
            assertTrue(page.startsWith("HTTP/1.1 200"), page);
            assertTrue(page.contains("Strict-Transport-Security"), page);
            assertTrue(page.contains("__Host-tunica="), page);
            assertTrue(page.contains("Secure"), page);
            assertEquals("HTTP/1.1 403", status(clinic, "/sign-in", host, far));
            assertEquals("HTTP/1.1 401", status(clinic, "/server/prometheus", host, far, "X-Forwarded-Proto: https"));
        }
    }

    @Test
    void clientOfAProxy_cannotPassForThisMachine() throws Exception {
        try (Clinic clinic = open(ProtectionTest::behindProxy)) {
            assertEquals(
                    "HTTP/1.1 403",
                    status(clinic, "/sign-in", "Host: tunica.clinic.example", "X-Forwarded-For: 127.0.0.1, 192.0.2.9"));
        }
    }

    @Test
    void anotherMachine_isRefusedInTheClear() throws Exception {
        InetAddress own = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(address -> address.isSiteLocalAddress() && address.getAddress().length == 4)
                .findFirst()
                .orElse(InetAddress.getLoopbackAddress());
        Assumptions.assumeFalse(own.isLoopbackAddress(), "this machine has no other address");
        try (Clinic clinic = open(settings -> behindProxy(settings).with(new Listening("0.0.0.0", 0)))) {
            try (Socket socket = new Socket(own, clinic.server.port(), own, 0)) {
                assertTrue(
                        ask(socket, "/sign-in", "Host: tunica.clinic.example").startsWith("HTTP/1.1 403"));
            }
        }
    }

    /** A certificate made by the platform's own tool, trusted by the client alone. */
    @Test
    void tls_isSpokenAndNothingElse() throws Exception {
        ServerKeys keys = ServerKeys.make(folder);
        Path password = Files.writeString(folder.resolve("password"), ServerKeys.PASSWORD + "\n");
        Protection.Tls tls = new Protection.Tls(keys.file().toString(), password.toString());
        Protection protection = new Protection(Set.of(), Optional.of(tls), List.of());
        RecordSystems records = ServerSettings.read(
                        "server.yaml",
                        ("format: tunica-server/1\n" + Served.signed(Keys.published(Keys.CURVED)))
                                .getBytes(StandardCharsets.UTF_8))
                .recordSystems();
        try (Clinic clinic = open(settings ->
                settings.with(protection).with(new Listening("0.0.0.0", 0)).with(records))) {
            clinic.user("rosa", Role.SPECIALIST);
            HttpClient client =
                    HttpClient.newBuilder().sslContext(keys.trusting()).build();
            HttpResponse<String> page = client.send(
                    HttpRequest.newBuilder(URI.create("https://localhost:" + clinic.server.port() + "/sign-in"))
                            .build(),
                    HttpResponse.BodyHandlers.ofString());
            assertEquals(200, page.statusCode());
            String cookie = page.headers().firstValue("Set-Cookie").orElseThrow();
            assertTrue(cookie.startsWith("__Host-tunica=") && cookie.contains("Secure"), cookie);
            assertTrue(page.headers().firstValue("Strict-Transport-Security").isPresent());
            assertEquals("HTTP/1.1 400", status(clinic, "/sign-in", "Host: localhost"));
            aHook_isAnsweredOnceForEachToken(client, clinic);
        }
    }

    private static void aHook_isAnsweredOnceForEachToken(HttpClient client, Clinic clinic) throws Exception {
        String path = "/cds-services/vein-closure";
        HttpRequest.Builder call = HttpRequest.newBuilder(
                        URI.create("https://localhost:" + clinic.server.port() + path))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofFile(Path.of("knowledge/demo/fhir/patient-view.json")));
        String token = Token.sound(Served.BASE + path, clinic.clock.instant()).signed();
        HttpResponse.BodyHandler<String> text = HttpResponse.BodyHandlers.ofString();
        assertEquals(401, client.send(call.build(), text).statusCode());
        call.header("Authorization", "Bearer " + token);
        HttpResponse<String> answer = client.send(call.build(), text);
        assertEquals(200, answer.statusCode(), answer::body);
        assertTrue(answer.body().contains("\"cards\""), answer::body);
        assertEquals(401, client.send(call.build(), text).statusCode());
    }

    private Clinic open(UnaryOperator<ServerSettings> settings) {
        return Clinic.at(folder.resolve("data").toString(), settings);
    }

    private static ServerSettings named(ServerSettings settings) {
        return settings.with(new Protection(Set.of("tunica.clinic.example"), Optional.empty(), List.of()));
    }

    private static ServerSettings behindProxy(ServerSettings settings) {
        return settings.with(new Protection(Set.of("tunica.clinic.example"), Optional.empty(), List.of("127.0.0.1")));
    }

    private static String status(Clinic clinic, String path, String... headers) throws Exception {
        String answer = raw(clinic, path, headers);
        return answer.substring(0, Math.min(12, answer.length()));
    }

    private static String raw(Clinic clinic, String path, String... headers) throws Exception {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), clinic.server.port())) {
            return ask(socket, path, headers);
        }
    }

    private static String ask(Socket socket, String path, String... headers) throws Exception {
        String request =
                "GET " + path + " HTTP/1.1\r\n" + String.join("\r\n", headers) + "\r\nConnection: close\r\n\r\n";
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        InputStream in = socket.getInputStream();
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
}
