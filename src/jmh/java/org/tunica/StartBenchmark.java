package org.tunica;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time from the start of a new JVM to its end, by the jar that {@code mvn package} made: p0.00 is the least of the starts,
 * p0.50 the median, p1.00 the most. The case without a wall thickness asks nothing of the heat model, whose search would
 * hide everything else.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 15, time = 1, timeUnit = TimeUnit.MILLISECONDS)
public class StartBenchmark {
    private static final String JAR = "target/tunica.jar";
    private static final String NO_HEAT = "knowledge/demo/missing-wall-thickness.json";
    private static final String HEAT = "knowledge/demo/straight-thigh-trunk.json";

    /** A bare {@code java -jar}, or the options of {@code src/main/dist/tunica}. */
    @Param({"plain", "archive"})
    public String launch = "";

    private final List<String> options = new ArrayList<>();

    /** Makes the archive of classes. */
    @Setup
    public void archive() throws IOException, InterruptedException {
        if (!Files.exists(Path.of(JAR))) {
            throw new IllegalStateException(JAR + " is missing: mvn package makes it");
        }
        if (launch.equals("archive")) {
            Path archive = Files.createTempDirectory("start").resolve("tunica.jsa");
            java(List.of("-XX:ArchiveClassesAtExit=" + archive, "-XX:+UseSerialGC"), main("advise", NO_HEAT));
            options.addAll(List.of("-XX:SharedArchiveFile=" + archive, "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
        }
    }

    /** Release loaded, case read, all rules judged on one segment. */
    @Benchmark
    public void firstVerdicts() throws IOException, InterruptedException {
        String path = JAR + File.pathSeparator + "target/test-classes";
        java(options, List.of("-cp", path, FirstVerdicts.class.getName(), NO_HEAT));
    }

    /** The whole advice as text, no heat asked. */
    @Benchmark
    public void adviceWithoutHeat() throws IOException, InterruptedException {
        java(options, main("advise", NO_HEAT));
    }

    /** The whole advice with a search for every heat device. */
    @Benchmark
    public void adviceWithHeat() throws IOException, InterruptedException {
        java(options, main("advise", HEAT));
    }

    private static List<String> main(String command, String file) {
        return List.of("-cp", JAR, "org.tunica.cli.Main", command, file);
    }

    private static void java(List<String> options, List<String> rest) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(options);
        command.addAll(rest);
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (process.waitFor() != 0) {
            throw new IllegalStateException(String.join(" ", command) + " ended with " + process.exitValue());
        }
    }
}
