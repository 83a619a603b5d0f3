package org.tunica.similar;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.Directory;
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

/** Time of one question for the ten nearest past segments, exactly; and of looking at each. Percentiles are sampled. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx3g")
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 10)
public class SimilarBenchmark {
    private static final int QUESTIONS = 400;
    private static final Query ALL = new MatchAllDocsQuery();

    /** Treated segments in the index; -p segments=1000000 for the large one. */
    @Param({"10000", "100000"})
    private int segments;

    private MadeUpIndex index;
    private List<Asked> questions;
    private Query technique;
    private int next;

    /** Makes up the segments and the questions. */
    @Setup
    public void fill() throws IOException {
        Directory directory = new ByteBuffersDirectory();
        MadeUpIndex.fill(directory, segments);
        index = new MadeUpIndex(directory);
        questions = MadeUpIndex.questions(QUESTIONS, MadeUpIndex.SIMILARITY);
        technique = new Filters(new StandardAnalyzer())
                .of(new SimilarFilter(
                        Optional.of("foam-polidocanol"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
    }

    private Asked question() {
        next = (next + 1) % QUESTIONS;
        return questions.get(next);
    }

    /** The nearest of all. */
    @Benchmark
    public Object nearest() throws IOException {
        return index.nearest(question(), ALL);
    }

    /** The nearest of those treated with one technique. */
    @Benchmark
    public Object nearestOfOneTechnique() throws IOException {
        return index.nearest(question(), technique);
    }

    /** Looking at each. */
    @Benchmark
    public Object bruteForce() throws IOException {
        return index.bruteForce(question());
    }
}
