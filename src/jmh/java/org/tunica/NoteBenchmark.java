package org.tunica;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
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
import org.tunica.paper.Document;

/** A procedure note from the bytes of plan and record to the finished page; wanted in under 300 ms when warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 2)
public class NoteBenchmark {
    @Param({"straight-thigh-trunk", "both-legs-many-segments", "large-trunk-anticoagulated"})
    public String demo = "";

    private final Tunica tunica = Tunica.shipped();
    private byte[] plan = {};
    private byte[] delivered = {};

    /** Plans the demo case and loads the record beside it. */
    @Setup
    public void load() throws IOException {
        Path cases = Path.of("knowledge/demo");
        byte[] caseFile = Files.readAllBytes(cases.resolve(demo + ".json"));
        plan = tunica.toJson(tunica.plan(tunica.readCase("case", caseFile))).getBytes(StandardCharsets.UTF_8);
        delivered = Files.readAllBytes(cases.resolve("delivered/" + demo + ".json"));
    }

    /** The note as data, the heat model run on every stretch. */
    @Benchmark
    public Document page() {
        return tunica.treatments()
                .note(tunica.readPlan("plan", plan), tunica.treatments().readDelivered("delivered", delivered))
                .page();
    }

    /** The same as HTML. */
    @Benchmark
    public String html() {
        return tunica.toHtml(page());
    }

    /** The same as PDF. */
    @Benchmark
    public byte[] pdf() {
        return tunica.toPdf(page());
    }
}
