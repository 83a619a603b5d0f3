package org.tunica.rules;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
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
import org.openjdk.jmh.annotations.Warmup;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.GlossaryField;
import org.tunica.physics.Derived;

/**
 * Time of the whole shipped rule base alone, facts ready, against the same rules written by hand as plain Java and against
 * another engine; the three must agree on every demo case before anything is measured. Add {@code -prof gc} for the bytes.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgs = "-Xmx1g")
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 9, time = 1)
public class RuleBenchmark {
    private static final Path DEMO = Path.of("knowledge/demo");

    /** One segment (15 options), one with much unknown, and six segments (90 options). */
    @Param({"straight-thigh-trunk", "missing-wall-thickness", "both-legs-many-segments"})
    public String demo = "";

    private final Tunica tunica = Tunica.shipped();
    private final Map<String, GlossaryField> fields =
            tunica.knowledge().glossary().fields();
    private final HandRules hand = HandWriter.write(
            tunica.rules().rules().stream().filter(rule -> !rule.afterRanking()).toList());
    private final PeerEngine peer = new PeerEngine(
            tunica.rules().rules().stream().filter(rule -> !rule.afterRanking()).toList());
    private List<OptionFacts> options = List.of();
    private List<Object> optionsByHand = List.of();

    /** Holds the three against each other, then loads the case to measure. */
    @Setup
    public void load() throws IOException {
        try (Stream<Path> files = Files.list(DEMO)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".json")).toList()) {
                agree(facts(file));
            }
        }
        options = facts(DEMO.resolve(demo + ".json"));
        optionsByHand =
                options.stream().map(option -> hand.read(option, fields)).toList();
    }

    private void agree(List<OptionFacts> facts) {
        var expected = Said.ofVerdicts(tunica.rules().judge(facts));
        List<Said> byHand = new ArrayList<>();
        facts.forEach(option -> hand.judge(hand.read(option, fields), byHand));
        if (expected.isEmpty()
                || !Said.of(byHand).equals(expected)
                || !Said.of(peer.judge(facts)).equals(expected)) {
            throw new IllegalStateException("engine, hand and peer do not agree");
        }
    }

    private List<OptionFacts> facts(Path file) throws IOException {
        CaseFile caseFile = tunica.readCase(file.toString(), Files.readAllBytes(file));
        List<OptionFacts> facts = new ArrayList<>();
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                Derived derived = tunica.physics().derive(caseFile, segment);
                tunica.knowledge()
                        .techniques()
                        .values()
                        .forEach(technique -> facts.add(
                                tunica.rules().facts(new Considered(caseFile, limb, segment, technique, derived))));
            }
        }
        return facts;
    }

    /** Ends the threads of the other engine. */
    @TearDown
    public void close() {
        peer.close();
    }

    /** The shipped way. */
    @Benchmark
    public List<Verdict> drools() {
        return tunica.rules().judge(options);
    }

    /** Fields and {@code if}: nothing can be faster. */
    @Benchmark
    public List<Said> byHand() {
        List<Said> said = new ArrayList<>();
        optionsByHand.forEach(option -> hand.judge(option, said));
        return said;
    }

    /** The other engine. */
    @Benchmark
    public List<Said> evrete() {
        return peer.judge(options);
    }
}
