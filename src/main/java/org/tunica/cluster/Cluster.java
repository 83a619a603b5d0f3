package org.tunica.cluster;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.CaseProgress;
import org.tunica.pastcases.PastCase;
import org.tunica.pastcases.PastCaseReader;
import org.tunica.physics.Physics;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.CaseSource;
import org.tunica.similar.SegmentRows;

/**
 * A search engine that many share, and the index of past segments on it. One index serves every release that knows the same
 * words and relaxes walls by the same numbers; releases that do not have one of their own beside it.
 */
public final class Cluster {
    private final EngineAddress address;
    private final Knowledge knowledge;
    private final Physics physics;
    private final SegmentRows rows;
    private final Names names;
    private final Layout layout;

    /** @param toLine a past case as JSON on one line */
    public Cluster(EngineAddress address, Knowledge knowledge, Physics physics, Function<PastCase, String> toLine) {
        this.address = address;
        this.knowledge = knowledge;
        this.physics = physics;
        this.rows = new SegmentRows(knowledge, physics);
        this.names = new Names(rows.layout());
        this.layout = new Layout(toLine);
    }

    /**
     * How the index is spread.
     *
     * @param shards parts it is split into, of about ten million segments at most
     * @param copies of each part beside the first; with none, a lost node takes its part along
     * @param over whether a half-loaded index, left by a load that died, may be thrown away
     */
    public record Spread(int shards, int copies, boolean over) {
        /** What fits three nodes. */
        public static final Spread USUAL = new Spread(3, 1, false);

        /** The same, and a half-loaded index may be thrown away. */
        public Spread over(boolean other) {
            return new Spread(shards, copies, other);
        }
    }

    /**
     * What was loaded.
     *
     * @param cases that have a treated segment
     * @param segments treated
     */
    public record Rebuilt(long cases, long segments) {}

    /**
     * Loads all cases of a source into a new index, which takes the place of the one in use when all of it is there.
     *
     * @throws FaultyInput when a case cannot be read, or somebody else is loading
     * @throws EngineUnavailable when the engine does not take it; the index in use stays
     */
    public Rebuilt rebuild(CaseSource source, Spread spread, CaseProgress progress) {
        try (Engine engine = Engine.at(address)) {
            Loading.Loaded loaded = new Loading(engine, names, layout)
                    .load(source, rows, spread.shards(), spread.copies(), spread.over(), progress);
            return new Rebuilt(loaded.cases(), loaded.segments());
        }
    }

    /**
     * Brings the index in use up to what came and went since it was loaded.
     *
     * @param added cases that came; its digest and words stand for all cases that are then there
     * @param goneIds ids of cases that went
     * @throws FaultyInput when there is no index for this release
     */
    public void follow(CaseSource added, List<String> goneIds) {
        try (Engine engine = Engine.at(address)) {
            ClusterIndex.Meta before = meta(engine);
            new Following(engine, names.inUse(), layout).follow(added, rows, goneIds, before);
        }
    }

    /** The digest of the cases in the index in use; none when there is no index for this release. */
    public Optional<String> digest() {
        try (Engine engine = Engine.at(address)) {
            return found(engine).map(ClusterIndex.Meta::digest);
        }
    }

    /**
     * Holds the index in use against cases.
     *
     * @throws FaultyInput when there is no index for this release
     */
    public Verification verify(CaseSource source, CaseProgress progress) {
        try (Engine engine = Engine.at(address)) {
            meta(engine);
            return new Checking(engine, names.inUse(), layout).check(source, rows, progress);
        }
    }

    /**
     * Opens the index in use for searching; its cases come from it, too.
     *
     * @throws FaultyInput when there is no index for this release
     * @throws EngineUnavailable when the engine does not answer
     */
    public CaseLibrary open() {
        Engine engine = Engine.at(address);
        try {
            ClusterIndex.Meta meta = meta(engine);
            ClusterIndex index = new ClusterIndex(engine, names.inUse(), meta);
            CaseSource cases = new ClusterCases(engine, names.inUse(), meta, new PastCaseReader(knowledge));
            return CaseLibrary.over(index, cases, knowledge, physics);
        } catch (RuntimeException e) {
            engine.close();
            throw e;
        }
    }

    private ClusterIndex.Meta meta(Engine engine) {
        return found(engine)
                .orElseThrow(() -> new FaultyInput(
                        "index",
                        List.of(new Fault(
                                names.inUse(),
                                "is not there: no index was loaded for the words and numbers of these rules; \"index"
                                        + " rebuild\" loads one"))));
    }

    private Optional<ClusterIndex.Meta> found(Engine engine) {
        return ClusterIndex.Meta.at(engine, names.inUse());
    }
}
