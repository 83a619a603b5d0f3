package org.tunica;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.tunica.casefile.CaseFile;
import org.tunica.cluster.Cluster;
import org.tunica.cluster.EngineAddress;
import org.tunica.invented.InventedLibrary;
import org.tunica.knowledge.Knowledge;
import org.tunica.outcomes.HappenedCurves;
import org.tunica.outcomes.HappenedPage;
import org.tunica.outcomes.OutcomeNumbers;
import org.tunica.pastcases.PastCase;
import org.tunica.physics.Physics;
import org.tunica.plan.Advice;
import org.tunica.plan.SegmentAdvice;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.CaseSource;
import org.tunica.similar.PastSigns;
import org.tunica.similar.SegmentRows;
import org.tunica.similar.SimilarCases;
import org.tunica.similar.SimilarRequest;
import org.tunica.similar.SimilarWriter;

/** Everything a user can ask about past segments like those of a case. Immutable. */
public final class Likeness {
    private final Knowledge knowledge;
    private final Physics physics;
    private final Function<PastCase, String> toLine;
    private final Asked asked;

    /** @param toLine a past case as JSON on one line */
    Likeness(Knowledge knowledge, Physics physics, Function<PastCase, String> toLine) {
        this.knowledge = knowledge;
        this.physics = physics;
        this.toLine = toLine;
        this.asked = new Asked(knowledge);
    }

    /** The usual library of made-up past cases, to be searched; its index is in memory. */
    public CaseLibrary inventedCases() {
        CaseSource source = inventedSource(InventedLibrary.USUAL_SEED, InventedLibrary.USUAL_COUNT);
        return CaseLibrary.inMemory(source, knowledge, physics);
    }

    /** Made-up cases, to be loaded somewhere. */
    public CaseSource inventedSource(long seed, long count) {
        return new InventedCases(new InventedLibrary(knowledge, seed), seed, count);
    }

    /**
     * The released past cases of a case base, to be loaded somewhere.
     *
     * @param folder of the case base
     * @throws org.tunica.casefile.FaultyInput when its file cannot be read
     */
    public CaseSource source(Path folder) {
        return new SegmentRows(knowledge, physics).base(folder);
    }

    /** A search engine that many share. */
    public Cluster cluster(EngineAddress address) {
        return new Cluster(address, knowledge, physics, toLine);
    }

    /**
     * The released past cases of a case base, to be searched.
     *
     * @param folder of the case base
     * @throws org.tunica.casefile.FaultyInput when a case cannot be read
     */
    public CaseLibrary cases(Path folder) {
        return CaseLibrary.of(folder, knowledge, physics);
    }

    /**
     * Past segments like those of a case, and why.
     *
     * @throws org.tunica.casefile.FaultyInput for an unknown segment or technique
     */
    public SimilarCases similar(CaseFile caseFile, CaseLibrary library, SimilarRequest request) {
        request.segment().ifPresent(ref -> asked.segment(caseFile, ref));
        request.filter().technique().ifPresent(asked::technique);
        return new SimilarWriter(library, physics, knowledge).of(caseFile, request);
    }

    /**
     * Past segments whose notes fit some words best.
     *
     * @throws org.tunica.casefile.FaultyInput for an unknown technique
     */
    public SimilarCases similar(String words, CaseLibrary library, SimilarRequest request) {
        request.filter().technique().ifPresent(asked::technique);
        return new SimilarWriter(library, physics, knowledge).byWords(words, request);
    }

    /** An advice with past segments beside each of the case. They change nothing else of it. */
    public Advice withSimilar(Advice advice, CaseFile caseFile, CaseLibrary library) {
        SimilarCases similar = similar(caseFile, library, SimilarRequest.usual());
        List<SegmentAdvice> segments = new ArrayList<>();
        for (int i = 0; i < advice.segments().size(); i++) {
            segments.add(advice.segments()
                    .get(i)
                    .withSimilar(similar.segments().get(i).similar()));
        }
        return new Advice(
                advice.format(), advice.caseRef(), advice.release(), advice.seed(), advice.caution(), segments);
    }

    /**
     * Past cases that were released one by one, to be searched; their index is in memory.
     *
     * @param says what they are, in words for people
     */
    public CaseLibrary released(String says, List<PastCase> cases) {
        return CaseLibrary.inMemory(new ListedCases(says, cases), knowledge, physics);
    }

    /** Finds signs of a hard case in past cases; no ranking is changed by them. */
    public PastSigns signs(CaseLibrary library) {
        return new PastSigns(knowledge, library);
    }

    /** How long the nearest past segments stayed closed, drawn. */
    public HappenedCurves curves(Advice.Release release) {
        return new HappenedCurves(OutcomeNumbers.of(knowledge), release);
    }

    /** Writes what happened to the nearest past segments. */
    public HappenedPage happenedPage() {
        return new HappenedPage(OutcomeNumbers.of(knowledge));
    }
}
