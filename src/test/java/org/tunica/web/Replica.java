package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.tunica.plan.Advice;

/** One of several servers over one database, in a process of its own. */
final class Replica implements AutoCloseable {
    private static final int LONGEST_START_S = 120;

    private final String place;
    private final Path folder;
    private final BlockingQueue<List<String>> told = new LinkedBlockingQueue<>();
    private volatile Process process;
    private volatile URI address;

    /** Begins to start; {@link #up()} waits. */
    Replica(String place, Path folder) throws IOException {
        this.place = place;
        this.folder = folder;
        this.process = start();
    }

    private Process start() throws IOException {
        ProcessBuilder program = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "org.tunica.cli.Main",
                "serve",
                "--empty");
        // as a container or a service says it
        program.environment()
                .putAll(Map.of(
                        "TUNICA_DATA",
                        place,
                        "TUNICA_PORT",
                        "0",
                        "TUNICA_ADDRESS",
                        "127.0.0.1",
                        "TUNICA_SETTINGS",
                        folder.resolve("server.yaml").toString()));
        Process started = program.redirectError(
                        ProcessBuilder.Redirect.appendTo(folder.resolve("log").toFile()))
                .start();
        Thread reading = new Thread(() -> read(started.inputReader(StandardCharsets.UTF_8)));
        reading.setDaemon(true);
        reading.start();
        return started;
    }

    private void read(BufferedReader out) {
        List<String> said = new ArrayList<>();
        try {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                said.add(line);
                if (line.equals(Advice.CAUTION)) {
                    told.add(List.copyOf(said));
                    said.clear();
                }
            }
        } catch (IOException e) {
            // it was killed
        }
    }

    /** Waits until it answers, anew where it restarted itself; gives what it said. */
    List<String> up() throws InterruptedException {
        List<String> said = told.poll(LONGEST_START_S, TimeUnit.SECONDS);
        assertTrue(said != null, this::log);
        address = URI.create(said.get(0).replaceAll(".* at (http\\S+)/$", "$1"));
        return said;
    }

    String log() {
        try {
            return "it did not start: " + Files.readString(folder.resolve("log"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    URI address() {
        return address;
    }

    Browser browser() {
        return new Browser(address);
    }

    /** Ends it as a power cut would. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** Starts it again, at another port. */
    void again() throws IOException, InterruptedException {
        process = start();
        up();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
