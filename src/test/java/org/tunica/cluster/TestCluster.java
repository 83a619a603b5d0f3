package org.tunica.cluster;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A real search engine of one or several nodes on loopback, each a process of its own that can be killed. */
public final class TestCluster implements AutoCloseable {
    private static final Path CLASS_PATH = Path.of("target/engine.classpath");
    private static final String SOURCE = "src/test/cluster/ClusterNode.java";

    /** What starts soonest; for nodes that are asked some hundred questions. */
    private static final List<String> QUICK = List.of("-Xmx512m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");

    private final Path folder;
    private final List<String> jvm;
    private final List<Process> nodes = new ArrayList<>();
    private final List<Integer> ports;

    private TestCluster(Path folder, List<String> jvm, List<Integer> ports) {
        this.folder = folder;
        this.jvm = jvm;
        this.ports = ports;
    }

    /** Starts nodes and waits until all of them have found each other. */
    public static TestCluster of(int count) {
        return of(count, QUICK);
    }

    /**
     * Starts nodes and waits until all of them have found each other.
     *
     * @param jvm arguments of the Java process of each node
     */
    static TestCluster of(int count, List<String> jvm) {
        try {
            List<Integer> ports = free(2 * count);
            TestCluster cluster = new TestCluster(Files.createTempDirectory("engine"), jvm, ports.subList(0, count));
            for (int node = 0; node < count; node++) {
                cluster.nodes.add(cluster.start(node, ports.subList(count, 2 * count)));
            }
            for (Process node : cluster.nodes) {
                awaitStart(node);
            }
            try (Engine engine = cluster.engine()) {
                engine.ask("GET", "/_cluster/health?wait_for_nodes=" + count + "&timeout=60s", Engine.object());
            }
            return cluster;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Integer> free(int count) throws IOException {
        List<ServerSocket> sockets = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            sockets.add(new ServerSocket(0, 1, InetAddress.getLoopbackAddress()));
        }
        List<Integer> ports = sockets.stream().map(ServerSocket::getLocalPort).toList();
        for (ServerSocket socket : sockets) {
            socket.close();
        }
        return ports;
    }

    private Process start(int node, List<Integer> between) throws IOException {
        Path home = Files.createDirectories(folder.resolve("n" + node));
        String names = IntStream.range(0, between.size()).mapToObj(i -> "n" + i).collect(Collectors.joining(","));
        String addresses = between.stream().map(port -> "127.0.0.1:" + port).collect(Collectors.joining(","));
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(jvm);
        command.addAll(List.of(
                "-cp",
                Files.readString(CLASS_PATH),
                SOURCE,
                "n" + node,
                home.toString(),
                String.valueOf(ports.get(node)),
                String.valueOf(between.get(node)),
                names,
                addresses));
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }

    /** Waits until a node says it has started; what it says later is read and forgotten, so that it never waits for us. */
    private static void awaitStart(Process node) throws IOException {
        StringBuilder said = new StringBuilder();
        BufferedReader lines = node.inputReader(StandardCharsets.UTF_8);
        for (String line = lines.readLine(); ; line = lines.readLine()) {
            if (line == null) {
                throw new IllegalStateException("a node did not start: " + said);
            }
            said.append(line).append('\n');
            if (line.startsWith("started ")) {
                break;
            }
        }
        Thread reading = new Thread(() -> lines.lines().forEach(line -> {}));
        reading.setDaemon(true);
        reading.start();
    }

    public EngineAddress address() {
        return EngineAddress.of(
                ports.stream().map(port -> "http://127.0.0.1:" + port).collect(Collectors.joining(",")), Map.of());
    }

    Engine engine() {
        return Engine.at(address());
    }

    /** Kills a node at once, as a power cut would. */
    public void kill(int node) {
        nodes.get(node).destroyForcibly();
    }

    /** Waits until no part of any index lacks its copy, or is being moved. */
    void awaitHealthy() {
        try (Engine engine = engine()) {
            engine.ask(
                    "GET",
                    "/_cluster/health?wait_for_status=green&wait_for_no_relocating_shards=true&timeout=120s",
                    Engine.object());
        }
    }

    @Override
    public void close() {
        nodes.forEach(Process::destroyForcibly);
        try {
            for (Process node : nodes) {
                node.waitFor(30, TimeUnit.SECONDS);
            }
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
