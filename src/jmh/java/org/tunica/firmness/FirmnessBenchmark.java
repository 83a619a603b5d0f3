package org.tunica.firmness;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of ten thousand draws of fifteen options by seven criteria on one thread, with the confidence factors. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FirmnessBenchmark {
    private static final int OPTIONS = 15;
    private static final int CRITERIA = 7;
    private static final int DRAWS = 10_000;

    /** Nobody prefers any criterion. */
    @Benchmark
    public Object openWeights() {
        return AcceptabilityRun.of(new Chance(), WeightDraws.open(CRITERIA).table(DRAWS, 1 + 1), 1);
    }

    /** One criterion before all others. */
    @Benchmark
    public Object weightsInOrder() {
        return AcceptabilityRun.of(
                new Chance(),
                WeightDraws.open(CRITERIA).inOrder(1, 1, 1, 0, 1, 1, 1).table(DRAWS, 1 + 1),
                1);
    }

    private static final class Chance implements CriteriaDraws {
        @Override
        public int options() {
            return OPTIONS;
        }

        @Override
        public int criteria() {
            return CRITERIA;
        }

        @Override
        public void fill(int draw, SplittableRandom random, double[] values, int[] tiers) {
            for (int at = 0; at < values.length; at++) {
                values[at] = random.nextDouble();
            }
        }
    }
}
