package org.tunica.similar;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.store.Directory;
import org.tunica.invented.InventedLibrary;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.PastCase;
import org.tunica.physics.Physics;

/** Segments of made-up cases in an index, and questions of other made-up cases. */
final class MadeUpIndex {
    static final Knowledge KNOWLEDGE = Knowledge.of(Bundle.shipped());
    static final Similarity SIMILARITY = new Similarity(KNOWLEDGE);

    private static final Profiler PROFILER = new Profiler(new Physics(KNOWLEDGE), new Vocabulary(KNOWLEDGE));
    private static final int MOST = 10;

    private final DirectoryReader reader;
    private final BlockCache cache = new BlockCache();

    MadeUpIndex(Directory directory) throws IOException {
        this.reader = DirectoryReader.open(directory);
        for (var leaf : reader.leaves()) {
            cache.of(leaf.reader());
        }
    }

    /** Fills an index with so many segments. */
    static void fill(Directory directory, int segments) throws IOException {
        CaseIndex.fill(directory, index -> hand(segments, index));
    }

    private static void hand(int segments, Consumer<Entry> index) {
        InventedLibrary library = new InventedLibrary(KNOWLEDGE, 1);
        int left = segments;
        for (long number = 0; left > 0; number++) {
            PastCase pastCase = library.at(number);
            for (PastSegment past : PastSegment.of(pastCase, KNOWLEDGE)) {
                if (left-- > 0) {
                    index.accept(Entry.of(
                            past,
                            number,
                            PROFILER.treated(pastCase.caseFile(), past.limb(), past.segment(), past.delivered())));
                }
            }
        }
    }

    /** Segments that wait for treatment, of other cases. */
    static List<Asked> questions(int count, Similarity similarity) {
        List<Asked> questions = new ArrayList<>();
        InventedLibrary library = new InventedLibrary(KNOWLEDGE, 2);
        for (long number = 0; questions.size() < count; number++) {
            PastCase pastCase = library.at(number);
            pastCase.caseFile()
                    .limbs()
                    .forEach(limb -> limb.segments()
                            .forEach(segment -> questions.add(
                                    new Asked(similarity, PROFILER.planned(pastCase.caseFile(), limb, segment)))));
        }
        return questions.subList(0, count);
    }

    NearestSearch.Nearest nearest(Asked asked, Query filter) throws IOException {
        return new NearestSearch(new IndexSearcher(reader), cache).search(asked, filter, MOST);
    }

    /** The same by looking at every segment: what any index must beat. */
    List<NearestSearch.Near> bruteForce(Asked asked) throws IOException {
        PriorityQueue<NearestSearch.Near> best = new PriorityQueue<>(NearestSearch.BEST_FIRST.reversed());
        double[] scores = new double[Blocks.LONGEST];
        for (var leaf : reader.leaves()) {
            Blocks blocks = cache.of(leaf.reader());
            Asked.Ready ready = null;
            for (int block = 0; block < blocks.count(); block++) {
                if (ready == null || blocks.kind(block) != blocks.kind(block - 1)) {
                    ready = asked.ready(blocks, block);
                }
                if (!ready.tooLittle()) {
                    ready.score(blocks, block, scores);
                    keep(best, blocks, block, scores, leaf.docBase);
                }
            }
        }
        List<NearestSearch.Near> sorted = new ArrayList<>(best);
        sorted.sort(NearestSearch.BEST_FIRST);
        return sorted;
    }

    private static void keep(
            PriorityQueue<NearestSearch.Near> best, Blocks blocks, int block, double[] scores, int docBase) {
        for (int doc = blocks.start(block); doc < blocks.end(block); doc++) {
            double score = scores[doc - blocks.start(block)];
            if (best.size() < MOST || score >= best.element().similarity()) {
                best.add(new NearestSearch.Near(
                        docBase + doc, score, blocks.columns().order()[doc]));
                if (best.size() > MOST) {
                    best.remove();
                }
            }
        }
    }

    int blocks() throws IOException {
        int blocks = 0;
        for (var leaf : reader.leaves()) {
            blocks += cache.of(leaf.reader()).count();
        }
        return blocks;
    }
}
