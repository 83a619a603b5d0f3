package org.tunica;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.tunica.casefile.CaseFile;
import org.tunica.plan.Advice;

/** Time of a whole advice for six segments and fifteen techniques with 64 draws for every heat device. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx1g")
public class AdviceBenchmark {
    private static final Pattern WALL = Pattern.compile("(\"wallThicknessMm\": *)([0-9.]+)");

    /** More than the step to which walls are rounded. */
    private static final double THICKER_MM = 0.006;

    private Tunica tunica;
    private String json = "";
    private CaseFile known;
    private int walls;

    /** Loads the shipped rules and the case with six segments. */
    @Setup
    public void load() throws IOException {
        tunica = Tunica.shipped();
        json = Files.readString(Path.of("knowledge/demo/both-legs-many-segments.json"));
        known = read(json);
    }

    private CaseFile read(String text) {
        return tunica.readCase("benchmark", text.getBytes(StandardCharsets.UTF_8));
    }

    /** A case whose walls and gaps the heat model has met before. */
    @Benchmark
    @Warmup(iterations = 3, time = 2)
    @Measurement(iterations = 5, time = 2)
    public Advice rememberedWalls() {
        return tunica.advise(known);
    }

    /** A case with walls it has not met: each a little thicker than any before. */
    @Benchmark
    @Warmup(iterations = 2, time = 5)
    @Measurement(iterations = 3, time = 10)
    public Advice newWalls() {
        walls++;
        String wider = WALL.matcher(json)
                .replaceAll(wall -> wall.group(1) + (Double.parseDouble(wall.group(2)) + walls * THICKER_MM));
        return tunica.advise(read(wider));
    }
}
