package org.tunica.session;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time to plan eight segments with fifteen choices each, drawn anew for every plan, in one session or two. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx1g")
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class SessionBenchmark {
    private static final int SEGMENTS = 8;
    private static final int TECHNIQUES = 15;

    /** Share of what the best choices together would take that a session may hold: half binds hard, all hardly. */
    @Param({"0.4", "0.7", "1.0"})
    private double holds;

    @Param({"1", "2"})
    private int sessions;

    private final Random random = new Random(8);
    private Problem problem = new Problem(List.of(), Map.of(), 0, 0, 0, 1);

    /** Draws the next leg. */
    @Setup(Level.Invocation)
    public void draw() {
        List<List<Choice>> segments = new ArrayList<>();
        for (int i = 0; i < SEGMENTS; i++) {
            List<Choice> choices = new ArrayList<>();
            for (int j = 0; j < TECHNIQUES; j++) {
                choices.add(choice(j));
            }
            segments.add(choices);
        }
        Map<Shared, Integer> limits = new EnumMap<>(Shared.class);
        Shared.AMOUNTS.forEach(shared -> limits.put(shared, (int) (holds * taken(segments, shared))));
        problem = new Problem(segments, limits, 20_000, 5_000, 5_000, 1);
    }

    private Choice choice(int technique) {
        Map<Shared, Integer> takes = new EnumMap<>(Shared.class);
        takes.put(Shared.TIME, 5_000 + random.nextInt(20_000));
        switch (technique % 5) {
            case 0, 1 -> takes.put(Shared.LIDOCAINE, 1_000 + random.nextInt(6_000));
            case 2 -> {
                takes.put(Shared.FOAM, 500 + random.nextInt(6_000));
                takes.put(Shared.POLIDOCANOL, 100 + random.nextInt(900));
            }
            case 3 -> takes.put(Shared.POLIDOCANOL, 500 + random.nextInt(1_500));
            default -> takes.put(Shared.TETRADECYL, random.nextInt(900));
        }
        Optional<String> generator = technique % 5 < 2 ? Optional.of("generator " + technique % 4) : Optional.empty();
        return new Choice("technique " + technique, 1_000 + random.nextInt(2_000), takes, generator, false);
    }

    private static int taken(List<List<Choice>> segments, Shared shared) {
        return segments.stream()
                .mapToInt(choices -> choices.stream()
                        .mapToInt(choice -> choice.takes(shared))
                        .max()
                        .orElse(0))
                .sum();
    }

    /** One solution; that it was proved is checked, so that no early stop passes for speed. */
    @Benchmark
    public int solve() {
        SessionSolver.Solved solved = SessionSolver.solve(problem, sessions);
        if (!solved.proved()) {
            throw new IllegalStateException("stopped early");
        }
        return solved.worth();
    }
}
