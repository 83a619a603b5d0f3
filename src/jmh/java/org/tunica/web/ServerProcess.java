package org.tunica.web;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A server in a process of its own, as it is started by the command. */
final class ServerProcess implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("http://127\\.0\\.0\\.1:(\\d+)/");
    private static final Pattern RESIDENT = Pattern.compile("VmRSS:\\s+(\\d+) kB");

    private final Process process;
    private final int port;
    private final double readyAfterS;

    private ServerProcess(Process process, int port, double readyAfterS) {
        this.process = process;
        this.port = port;
        this.readyAfterS = readyAfterS;
    }

    static ServerProcess start() throws IOException {
        return start(List.of());
    }

    /** One that keeps its data at a place. */
    static ServerProcess over(String place) throws IOException {
        return start(List.of("--data", place));
    }

    private static ServerProcess start(List<String> more) throws IOException {
        Path settings = Files.createTempFile("server-", ".yaml");
        Files.writeString(
                settings,
                String.join(
                        "\n",
                        "format: tunica-server/1",
                        "adviceWithoutSignIn: true",
                        "limits: { perAddressPerMinute: 1000000, perCallerPerMinute: 1000000 }",
                        "recordSystems:",
                        "  site: knowledge/demo/fhir/site.yaml",
                        "  calls: unsigned-for-tests",
                        ""));
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command(settings, more))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader said = process.inputReader();
        for (String line = said.readLine(); line != null; line = said.readLine()) {
            Matcher address = ADDRESS.matcher(line);
            if (address.find()) {
                double seconds = (System.nanoTime() - start) / 1e9;
                return new ServerProcess(process, Integer.parseInt(address.group(1)), seconds);
            }
        }
        throw new IllegalStateException("the server said no address");
    }

    /** Our own start script where the program was packaged, else the classes as they lie. */
    private static List<String> command(Path settings, List<String> more) {
        Path packaged = Path.of("target/tunica.jar");
        List<String> program = Files.exists(packaged)
                ? List.of("java", "-Xmx1g", "-jar", packaged.toString())
                : List.of("java", "-Xmx1g", "-cp", System.getProperty("java.class.path"), "org.tunica.cli.Main");
        return Stream.of(program, List.of("serve", "--port", "0", "--settings", settings.toString()), more)
                .flatMap(List::stream)
                .toList();
    }

    int port() {
        return port;
    }

    double readyAfterS() {
        return readyAfterS;
    }

    /** Memory of the process in the machine, by the count of the operating system (Linux). */
    double residentMb() throws IOException {
        Matcher resident = RESIDENT.matcher(Files.readString(Path.of("/proc/" + process.pid() + "/status")));
        if (!resident.find()) {
            throw new IllegalStateException("the system does not tell");
        }
        return Long.parseLong(resident.group(1)) / 1_000.0;
    }

    @Override
    public void close() {
        process.destroy();
    }
}
