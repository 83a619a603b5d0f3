package org.tunica.heat;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Time of the heat model at the calibrated steps: {@code mvn -Pjmh test -DskipTests}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgs = "-Xmx512m")
public class HeatBenchmark {
    private static final int SIDE = 30;

    private final VeinSlice slice = VeinSlice.of(0.65, 8, 27).withNerveGapMm(3);
    private final HeatSetting rf = new HeatSetting.Pulled("rf-bipolar-pullback", 6, 12);
    private final HeatSetting laser = new HeatSetting.Pulled("laser-1470-radial", 10, 8);
    private HeatModel model;
    private HeatModel coarse;
    private HeatEnsemble ensemble;

    /** Reads the constants of knowledge/. */
    @Setup
    public void read() throws IOException {
        Map<String, JsonNode> entries = new HashMap<>();
        for (String file : List.of("knowledge/tissue.yaml", "knowledge/heat-devices.yaml")) {
            try (InputStream in = HeatBenchmark.class.getClassLoader().getResourceAsStream(file)) {
                new YAMLMapper().readTree(in).properties().forEach(e -> entries.put(e.getKey(), e.getValue()));
            }
        }
        HeatNumbers numbers = new HeatNumbers(
                id -> number(entries, id, "value"),
                id -> number(entries, id, "low"),
                id -> number(entries, id, "high"));
        HeatConstants constants = HeatConstants.from(numbers.value());
        model = HeatModel.of(constants);
        coarse = HeatModel.of(constants, Fineness.COARSE);
        ensemble = HeatEnsemble.of(numbers, 64, 1, Fineness.CALIBRATED);
    }

    private static double number(Map<String, JsonNode> entries, String id, String field) {
        JsonNode entry = entries.get(id);
        return (entry.has(field) ? entry.get(field) : entry.get("value")).asDouble();
    }

    /** One bipolar RF run, 74 shells. */
    @Benchmark
    public HeatRun oneRfRun() {
        return model.run(rf, slice);
    }

    /** One radial laser run with its steam, 74 shells. */
    @Benchmark
    public HeatRun oneLaserRun() {
        return model.run(laser, slice);
    }

    /** One radial laser run with its steam, 46 shells. */
    @Benchmark
    public HeatRun oneCoarseLaserRun() {
        return coarse.run(laser, slice);
    }

    /** 64 draws of bipolar RF. */
    @Benchmark
    public HeatSpread ensembleOf64() {
        return ensemble.run(rf, slice, MeasurementSpread.NONE);
    }

    /** Power by pull-back, 30 x 30 RF runs on two threads. */
    @Benchmark
    public double window30x30OnTwoThreads() throws InterruptedException {
        double[] depth = new double[SIDE * SIDE];
        Thread other = new Thread(() -> fill(depth, 1));
        other.start();
        fill(depth, 0);
        other.join();
        return IntStream.range(0, depth.length).mapToDouble(i -> depth[i]).sum();
    }

    private void fill(double[] depth, int odd) {
        for (int i = odd; i < depth.length; i += 2) {
            HeatSetting setting = new HeatSetting.Pulled("rf-bipolar-pullback", 2 + i / SIDE, 1 + 0.5 * (i % SIDE));
            depth[i] = model.run(setting, slice).killDepthMm();
        }
    }
}
