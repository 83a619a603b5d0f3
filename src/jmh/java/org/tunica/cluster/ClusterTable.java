package org.tunica.cluster;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.tunica.Tunica;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.pastcases.CaseProgress;
import org.tunica.pastcases.PastCase;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.CaseSource;
import org.tunica.similar.SimilarFilter;

/**
 * Prints how long the ten past segments most like one take to find, beside the cases and on a search engine of three nodes that
 * share the machine, and how long either index takes to build. Both answers of every question are compared.
 *
 * <p>Arguments: questions for each row; the numbers of made-up cases.
 */
public final class ClusterTable {
    private static final int MOST = 10;
    private static final int NODES = 3;
    private static final List<String> LASTING = List.of("-Xmx1g", "-XX:+UseSerialGC");
    private static final double MS_PER_NS = 1e-6;

    private final Tunica tunica = Tunica.shipped();
    private final int questions;

    private ClusterTable(int questions) {
        this.questions = questions;
    }

    /** Prints the table. */
    public static void main(String[] args) {
        rows(
                Integer.parseInt(args[0]),
                Arrays.stream(args).skip(1).map(Long::valueOf).toList());
        System.exit(0);
    }

    /** Prints the table. */
    public static void rows(int questions, List<Long> cases) {
        System.out.println("cases     segments  index      built s  p50 ms  p95 ms  max ms");
        cases.forEach(new ClusterTable(questions)::row);
    }

    private void row(long cases) {
        CaseSource source = tunica.likeness().inventedSource(7, cases);
        long began = System.nanoTime();
        try (CaseLibrary local = CaseLibrary.inMemory(source, tunica.knowledge(), tunica.physics())) {
            print(cases, "local", seconds(began), local);
            try (TestCluster nodes = TestCluster.of(NODES, LASTING)) {
                Cluster cluster = tunica.likeness().cluster(nodes.address());
                long loading = System.nanoTime();
                cluster.rebuild(source, Cluster.Spread.USUAL, CaseProgress.NONE);
                double built = seconds(loading);
                nodes.awaitHealthy();
                try (CaseLibrary far = cluster.open()) {
                    print(cases, "3 nodes", built, far);
                    Questions same = new Questions(tunica, 11);
                    IntStream.range(0, questions).forEach(question -> same.compare(question, local, far));
                }
            }
        }
    }

    private void print(long cases, String index, double built, CaseLibrary library) {
        IntConsumer ask = asking(library);
        IntStream.range(questions, questions + questions / 2).forEach(ask);
        double[] ms = IntStream.range(0, questions)
                .mapToDouble(question -> {
                    long began = System.nanoTime();
                    ask.accept(question);
                    return (System.nanoTime() - began) * MS_PER_NS;
                })
                .sorted()
                .toArray();
        System.out.printf(
                Locale.ROOT,
                "%9d %9d  %-9s %8.1f %7.1f %7.1f %7.1f%n",
                cases,
                library.size(),
                index,
                built,
                ms[questions / 2],
                ms[questions * 95 / 100],
                ms[questions - 1]);
    }

    private IntConsumer asking(CaseLibrary library) {
        var asking = tunica.pastCases().inventedLibrary(11);
        return question -> {
            PastCase asked = asking.at(question);
            Limb limb = asked.caseFile().limbs().get(0);
            Segment segment = limb.segments().get(question % limb.segments().size());
            library.nearest(asked.caseFile(), limb, segment, SimilarFilter.ALL, MOST);
        };
    }

    private static double seconds(long began) {
        return (System.nanoTime() - began) / 1e9;
    }
}
