package org.tunica.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/** Durable saves of a case of 4 KB with its audit row, and the check of a long trail. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 3)
public class StoreBenchmark {
    private static final int LONG_TRAIL = 100_000;
    private static final String CASE = "x".repeat(4_000);
    private static final Actor BY = new Actor("anna");

    @Param({"SQLITE", "POSTGRESQL"})
    public Engine engine = Engine.SQLITE;

    private final AtomicLong count = new AtomicLong();
    private Store saved;
    private Store longTrail;

    /** One store to write into, and one whose trail is long, written in a few large transactions. */
    @Setup
    public void open() throws IOException, SQLException {
        Path folder = Files.createTempDirectory("store");
        saved = Store.open(engine.freshPlace(folder), Clock.systemUTC());
        Store trail = Store.open(engine.freshPlace(folder), Clock.systemUTC());
        longTrail = trail;
        for (int part = 0; part < 10; part++) {
            int from = part * LONG_TRAIL / 10;
            trail.together(() -> {
                for (int i = from; i < from + LONG_TRAIL / 10; i++) {
                    trail.cases().save(BY, "c" + i, Cases.NONE, "{\"n\":" + i + "}");
                }
                return from;
            });
        }
    }

    @TearDown
    public void close() {
        saved.close();
        longTrail.close();
    }

    @Benchmark
    public KeptCase saveByOne() {
        return saved.cases().save(BY, "c" + count.incrementAndGet(), Cases.NONE, CASE);
    }

    @Benchmark
    @Threads(4)
    public KeptCase saveByFour() {
        return saved.cases().save(BY, "c" + count.incrementAndGet(), Cases.NONE, CASE);
    }

    /** A hundred thousand rows, and as many cases against them. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 1)
    @Measurement(iterations = 3)
    public Verification verifyHundredThousandRows() {
        return longTrail.audit().verify();
    }
}
