package org.tunica.similar;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;

/**
 * Prints how long it takes to find the ten nearest past segments: index, size, heap, latency, recall against looking at each. Where
 * other work runs on the machine, the time on the processor tells more than the time that passed; both are printed.
 *
 * <p>Arguments: numbers of segments; without any 10,000, 100,000 and 1,000,000.
 */
public final class RetrievalTable {
    private static final int QUESTIONS = 400;
    private static final int BRUTE_QUESTIONS = 60;
    private static final double NANOS_PER_MS = 1e6;
    private static final double BYTES_PER_MB = 1e6;

    private RetrievalTable() {}

    /** Prints the table. */
    public static void main(String[] args) throws IOException {
        int[] sizes = args.length == 0
                ? new int[] {10_000, 100_000, 1_000_000}
                : Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
        for (int size : sizes) {
            Path folder = Files.createTempDirectory("tunica-retrieval");
            try (Directory directory = FSDirectory.open(folder)) {
                table(directory, size);
            }
        }
    }

    private static void table(Directory directory, int size) throws IOException {
        long start = System.nanoTime();
        MadeUpIndex.fill(directory, size);
        double builtS = (System.nanoTime() - start) / 1e9;
        long bytes = 0;
        for (String file : directory.listAll()) {
            bytes += directory.fileLength(file);
        }
        long before = used();
        start = System.nanoTime();
        MadeUpIndex index = new MadeUpIndex(directory);
        double openedS = (System.nanoTime() - start) / 1e9;
        print(
                "%,d segments: made up and built in %.1f s, %.1f MB on disk, opened in %.2f s, %.1f MB of heap, %,d blocks%n",
                size, builtS, bytes / BYTES_PER_MB, openedS, (used() - before) / BYTES_PER_MB, index.blocks());
        List<Asked> usual = MadeUpIndex.questions(QUESTIONS, MadeUpIndex.SIMILARITY);
        List<Asked> other = MadeUpIndex.questions(QUESTIONS, MadeUpIndex.SIMILARITY.weighted(weights()));
        Query all = new MatchAllDocsQuery();
        Query technique = filter("foam-polidocanol");
        for (int warm = 0; warm < 2; warm++) {
            run(usual, asked -> index.nearest(asked, all));
        }
        run(usual.subList(0, 10), index::bruteForce);
        print("  %-28s %s%n", "nearest", run(usual, asked -> index.nearest(asked, all)));
        print("  %-28s %s%n", "other weights, no rebuild", run(other, asked -> index.nearest(asked, all)));
        print("  %-28s %s%n", "of one technique", run(usual, asked -> index.nearest(asked, technique)));
        print("  %-28s %s%n", "looking at each", run(usual.subList(0, BRUTE_QUESTIONS), index::bruteForce));
        print("  recall of the nearest ten against looking at each: %.4f%n", recall(index, usual, all));
    }

    private static double recall(MadeUpIndex index, List<Asked> questions, Query all) throws IOException {
        long found = 0;
        long wanted = 0;
        for (Asked asked : questions.subList(0, BRUTE_QUESTIONS)) {
            List<NearestSearch.Near> exact = index.bruteForce(asked);
            wanted += exact.size();
            found += exact.stream().filter(nearest(index, asked, all)::contains).count();
        }
        return (double) found / wanted;
    }

    private static List<NearestSearch.Near> nearest(MadeUpIndex index, Asked asked, Query all) throws IOException {
        return index.nearest(asked, all).best();
    }

    private interface Search {
        Object run(Asked asked) throws IOException;
    }

    private static String run(List<Asked> questions, Search search) throws IOException {
        double[] passed = new double[questions.size()];
        double[] worked = new double[questions.size()];
        var thread = ManagementFactory.getThreadMXBean();
        for (int i = 0; i < passed.length; i++) {
            long cpu = thread.getCurrentThreadCpuTime();
            long start = System.nanoTime();
            search.run(questions.get(i));
            passed[i] = (System.nanoTime() - start) / NANOS_PER_MS;
            worked[i] = (thread.getCurrentThreadCpuTime() - cpu) / NANOS_PER_MS;
        }
        return "passed " + quantiles(passed) + "   on the processor " + quantiles(worked);
    }

    private static String quantiles(double[] ms) {
        Arrays.sort(ms);
        return String.format(
                Locale.ROOT,
                "p50 %.2f p95 %.2f max %.2f ms",
                ms[ms.length / 2],
                ms[ms.length * 95 / 100],
                ms[ms.length - 1]);
    }

    private static Query filter(String technique) {
        return new Filters(new StandardAnalyzer())
                .of(new SimilarFilter(
                        Optional.of(technique),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
    }

    private static Map<Field, Double> weights() {
        Random random = new Random(3);
        Map<Field, Double> weights = new EnumMap<>(Field.class);
        for (Field field : Field.values()) {
            weights.put(field, 0.2 + 3 * random.nextDouble());
        }
        return weights;
    }

    private static long used() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
