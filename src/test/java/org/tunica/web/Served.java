package org.tunica.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tunica.Tunica;
import org.tunica.store.Store;

/** A real server of the invented clinic Larkspur with a real store, on a free port of loopback, at a fixed time. */
public final class Served implements AutoCloseable {
    public static final Instant NOW = Instant.parse("2026-03-20T10:00:00Z");
    public static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);

    /** By which callers know it; nothing listens there. */
    public static final String BASE = "https://tunica.larkspur.example";

    private static final Duration LONGEST_WAIT = Duration.ofSeconds(60);
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final Path folder;
    private final Store store;
    private final WebServer server;

    private Served(Path folder, Store store, WebServer server) {
        this.folder = folder;
        this.store = store;
        this.server = server;
    }

    /** One with these lines of settings below those every server has. */
    public static Served with(String lines) {
        return with(Tunica.shipped(), lines);
    }

    /** One that others than this machine could reach, which nobody may start so. */
    public static Served reachable(String lines) {
        return with(Tunica.shipped(), "0.0.0.0", lines);
    }

    /** The same over other rules. */
    public static Served with(Tunica tunica, String lines) {
        return with(tunica, "127.0.0.1", lines);
    }

    private static Served with(Tunica tunica, String address, String lines) {
        try {
            Path folder = Files.createTempDirectory("served-");
            Store store = Store.open(folder.toString(), CLOCK);
            String settings = "format: tunica-server/1\naddress: " + address + "\nport: 0\n" + lines;
            ServerSettings read = ServerSettings.read("server.yaml", settings.getBytes(StandardCharsets.UTF_8));
            return new Served(folder, store, WebServer.start(tunica, store, read, CLOCK));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Settings of a site that wants no token, as only tests may. */
    public static String unsigned() {
        return "recordSystems:\n  site: knowledge/demo/fhir/site.yaml\n  calls: unsigned-for-tests\n"
                + "  answerWithinMs: 10000\n  recordWithinMs: 10000\n  origins: [\"https://records.larkspur.example\"]\n";
    }

    /** Settings of a site that knows one record system by its keys. */
    public static String signed(String keys) {
        return "recordSystems:\n  site: knowledge/demo/fhir/site.yaml\n  baseAddress: " + BASE + "\n"
                + "  answerWithinMs: 10000\n  recordWithinMs: 10000\n  callers:\n"
                + "  - { name: ward-7, issuer: \"" + Token.ISSUER + "\", keys: '" + keys + "' }\n";
    }

    public Store store() {
        return store;
    }

    public Path folder() {
        return folder;
    }

    public int port() {
        return server.port();
    }

    /** Method and address of everything programs can ask, as the server itself maps it. */
    public Set<String> endpoints() {
        Set<String> endpoints = new TreeSet<>();
        server.mappings()
                .forEach(mapping -> mapping.getHandlerMethods()
                        .keySet()
                        .forEach(info -> info.getPatternValues()
                                .forEach(pattern -> info.getMethodsCondition()
                                        .getMethods()
                                        .forEach(method -> endpoints.add(method + " " + pattern)))));
        endpoints.removeIf(endpoint -> !endpoint.matches("\\S+ /(api/|cds-services|fhir/).*"));
        return endpoints;
    }

    /** A request to a path, not sent yet. */
    public HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
                .timeout(LONGEST_WAIT);
    }

    public HttpResponse<String> get(String path) {
        return send(at(path));
    }

    public HttpResponse<String> post(String path, byte[] json) {
        return send(at(path).header("Content-Type", "application/json").POST(BodyPublishers.ofByteArray(json)));
    }

    public HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return CLIENT.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        server.close();
        store.close();
        try (Stream<Path> found = Files.walk(folder)) {
            for (Path path : found.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
