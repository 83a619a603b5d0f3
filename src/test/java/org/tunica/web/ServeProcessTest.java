package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.knowledge.DemoFiles;
import org.tunica.plan.Advice;
import org.tunica.store.Store;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command itself in a process of its own: what it prints, what it logs, and how it ends. */
class ServeProcessTest {
    /** Stand where something of a patient could stand. */
    private static final List<String> PLANTED = List.of("Ottilie", "Vogelsang", "1947-11-03", "4711-0815");

    private static final String PASSWORD = "four grey herons wade";

    @TempDir
    private Path folder;

    @Test
    void firstStart_tellsTheAddressTheLinkAndTheCaution() throws Exception {
        try (Started served = serve("--data", folder.resolve("data").toString())) {
            String said = String.join("\n", served.said);
            assertTrue(said.contains("What is kept is in " + folder.resolve("data")), said);
            assertTrue(said.startsWith("Tunica answers at http://127.0.0.1:"), said);
            int invented = DemoFiles.cases().size();
            assertTrue(said.contains("Invented cases put in, to look around with: " + invented + "."), said);
            assertTrue(said.endsWith(Advice.CAUTION), said);
            Browser browser = served.browser();
            assertEquals(200, browser.get(served.link()).statusCode());
            assertEquals(200, browser.get("/server/health/readiness").statusCode());
        }
    }

    @Test
    void nothingOfAPatient_isInTheLog() throws Exception {
        Path data = folder.resolve("data");
        List<String> log;
        try (Started served = serve("--data", data.toString())) {
            Browser ada = administrator(served);
            Browser rosa = specialist(served, ada);
            for (Browser browser : List.of(ada, rosa, served.browser())) {
                for (String endpoint : RoleTableTest.endpoints()) {
                    ask(browser, endpoint);
                }
            }
            askOddly(served);
            String metrics = served.browser().get("/server/prometheus").body();
            PLANTED.forEach(word -> assertFalse(metrics.contains(word), metrics));
            log = served.stop();
        }
        List<String> says = new ArrayList<>();
        for (String line : log) {
            JsonNode read = new JsonMapper().readTree(line);
            says.add(read.get("says").stringValue());
            PLANTED.forEach(word -> assertFalse(line.contains(word), line));
        }
        assertTrue(says.get(0).startsWith("audit head "), says::toString);
        String last = says.get(says.size() - 1);
        try (Store store = Store.existing(data.toString(), Clock.systemUTC())) {
            assertEquals("audit head " + store.audit().head() + " (stop)", last);
            assertTrue(store.audit().verify().sound());
        }
    }

    /** Told to end while a request is half sent: the request ends first, then what was kept for this run alone goes. */
    @Test
    void stop_letsARunningRequestEnd() throws Exception {
        try (Started served = serve();
                Socket half = new Socket(
                        InetAddress.getLoopbackAddress(), served.address().getPort())) {
            OutputStream out = half.getOutputStream();
            out.write(("POST /api/advice HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                            + "Content-Length: 2\r\nConnection: close\r\n\r\n{")
                    .getBytes(StandardCharsets.US_ASCII));
            out.flush();
            Browser watching = served.browser();
            while (!watching.get("/server/prometheus")
                    .body()
                    .matches("(?s).*requests_active_seconds_count\\{[^}]*method=\"POST\"[^}]*} 1.*")) {
                Thread.onSpinWait();
            }
            served.process.destroy();
            out.write('}');
            out.flush();
            String answer = new String(half.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(answer.startsWith("HTTP/1.1 422"), answer);
            assertTrue(answer.contains("$.caseRef"), answer);
            served.stop();
            assertEquals(List.of(), left());
        }
    }

    private List<Path> left() throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().startsWith("tunica-"))
                    .toList();
        }
    }

    private static Browser administrator(Started served) throws Exception {
        Browser ada = served.browser();
        ada.fillIn(served.link(), Map.of("name", "ada", "password", PASSWORD, "again", PASSWORD));
        ada.signIn("ada", PASSWORD);
        return ada;
    }

    private static Browser specialist(Started served, Browser ada) throws Exception {
        String added = ada.json("PUT", "/api/users/rosa", "{\"roles\":[\"specialist\"]}", "If-None-Match", "*")
                .body();
        Browser rosa = served.browser();
        String link = URI.create(added.replaceAll(".*\"address\":\"([^\"]*)\".*", "$1"))
                .getPath();
        rosa.fillIn(link, Map.of("password", PASSWORD, "again", PASSWORD));
        rosa.signIn("rosa", PASSWORD);
        assertEquals(200, rosa.get("/api/cases").statusCode());
        return rosa;
    }

    private static void ask(Browser browser, String endpoint) throws Exception {
        String method = endpoint.substring(0, endpoint.indexOf(' ')).replace("ANY", "GET");
        String path = endpoint.substring(endpoint.indexOf(' ') + 1).replaceAll("\\{[a-zA-Z]+}|\\*\\*", PLANTED.get(0));
        String body = "{\"format\":\"tunica-case/1\",\"caseRef\":\"" + PLANTED.get(1) + "\",\"born\":\""
                + PLANTED.get(2) + "\",\"patient\":{\"ageYears\":\"" + PLANTED.get(3) + "\"}}";
        browser.json(
                method,
                path + "?number=" + PLANTED.get(3) + "&before=" + PLANTED.get(2),
                body,
                "X-Patient",
                PLANTED.get(1),
                "If-Match",
                PLANTED.get(0));
    }

    /** Requests no client library would send. */
    private static void askOddly(Started served) throws Exception {
        String name = PLANTED.get(0);
        for (String odd : List.of(
                "GET /{" + name + "} HTTP/1.1\r\nHost: localhost\r\n\r\n",
                "GET /x HTTP/1.1\r\nHost: " + name + ".example\r\n\r\n",
                "GET /x HTTP/1.1\r\nHost: localhost\r\nBad Header " + name + "\r\n\r\n",
                name + " /x HTTP/1.1\r\nHost: localhost\r\n\r\n",
                "GET /api/cases/%zz" + name + " HTTP/1.1\r\nHost: localhost\r\n\r\n",
                "GET /api/cases/..;/" + name + " HTTP/1.1\r\nHost: localhost\r\nCookie: tunica=" + name + "\r\n\r\n",
                "POST /api/advice HTTP/1.1\r\nHost: localhost\r\nContent-Type: " + name
                        + "\r\nContent-Length: 2\r\n\r\n{}",
                "POST /api/advice HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: chunked\r\n\r\n" + name)) {
            try (Socket socket = new Socket(
                    InetAddress.getLoopbackAddress(), served.address().getPort())) {
                socket.getOutputStream().write(odd.getBytes(StandardCharsets.UTF_8));
                socket.shutdownOutput();
                socket.getInputStream().readAllBytes();
            }
        }
        Browser browser = served.browser();
        HttpRequest.Builder form = browser.at("/sign-in")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString("name=" + name + "&password=" + PLANTED.get(1)));
        browser.send(form);
        browser.signIn(name, PLANTED.get(1));
    }

    private Started serve(String... options) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Djava.io.tmpdir=" + folder,
                "-cp",
                System.getProperty("java.class.path"),
                "org.tunica.cli.Main",
                "serve",
                "--port",
                "0"));
        command.addAll(List.of(options));
        return new Started(
                new ProcessBuilder(command)
                        .redirectError(folder.resolve("log").toFile())
                        .start(),
                folder.resolve("log"));
    }

    /** A server in a process of its own. */
    private static final class Started implements AutoCloseable {
        private final Process process;
        private final Path log;
        private final List<String> said = new ArrayList<>();

        Started(Process process, Path log) throws Exception {
            this.process = process;
            this.log = log;
            BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
            String line = out.readLine();
            while (line != null) {
                said.add(line);
                line = line.equals(Advice.CAUTION) ? null : out.readLine();
            }
            assertFalse(said.isEmpty(), () -> "nothing was said; the log: " + log());
        }

        private String log() {
            try {
                return Files.readString(log);
            } catch (java.io.IOException e) {
                return e.toString();
            }
        }

        URI address() {
            return URI.create(said.get(0).replaceAll(".* at (http\\S+)/$", "$1"));
        }

        String link() {
            return said.stream()
                    .filter(line -> line.startsWith("  http"))
                    .map(line -> URI.create(line.strip()).getPath())
                    .findFirst()
                    .orElseThrow();
        }

        Browser browser() {
            return new Browser(address());
        }

        /** Tells it to end, waits, and gives its log. */
        List<String> stop() throws Exception {
            process.destroy();
            assertTrue(process.waitFor(120, TimeUnit.SECONDS));
            return Files.readAllLines(log);
        }

        @Override
        public void close() {
            process.destroyForcibly();
        }
    }
}
