package org.tunica.similar;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreMode;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.LongHeap;

/**
 * Finds the segments most like a question exactly, by branch and bound (Land and Doig, Econometrica 1960;28(3):497-520, from
 * memory): blocks are taken by how alike their segments can be at best, and the search ends when no block left can hold one
 * that belongs among the best. A filter is any query; deleted segments are passed over; new parts of the index are just more
 * blocks.
 */
final class NearestSearch {
    /** Best first; the same likeness in the order of the random ids. */
    static final Comparator<Near> BEST_FIRST =
            Comparator.comparingDouble((Near near) -> -near.similarity()).thenComparingLong(Near::order);

    private final IndexSearcher searcher;
    private final BlockCache cache;

    /** How alike a document is. */
    record Near(int doc, double similarity, long order) {}

    /** What was found. */
    record Nearest(List<Near> best, int considered, int tooLittleKnown) {}

    /** One part of the index with the question made ready for each kind of block. */
    private record Part(Blocks blocks, Accepted accepted, int docBase, int firstBlock, Asked.Ready[] readyByKind) {
        Asked.Ready ready(int block) {
            return readyByKind[blocks.kind(block)];
        }

        int accepted(int block) {
            return accepted.count(blocks.start(block), blocks.end(block));
        }
    }

    NearestSearch(IndexSearcher searcher, BlockCache cache) {
        this.searcher = searcher;
        this.cache = cache;
    }

    /** The {@code most} documents of the filter most like the question. */
    Nearest search(Asked asked, Query filter, int most) throws IOException {
        List<Part> parts = parts(asked, filter);
        LongHeap waiting = new LongHeap(
                1 + parts.stream().mapToInt(part -> part.blocks().count()).sum());
        int considered = 0;
        int tooLittle = 0;
        for (Part part : parts) {
            for (int block = 0; block < part.blocks().count(); block++) {
                Asked.Ready ready = part.ready(block);
                int accepted = part.accepted(block);
                considered += accepted;
                if (ready.tooLittle()) {
                    tooLittle += accepted;
                } else if (accepted > 0) {
                    waiting.push(waiting(ready.atBest(part.blocks(), block), part.firstBlock() + block));
                }
            }
        }
        return new Nearest(best(parts, waiting, most), considered, tooLittle);
    }

    private static List<Near> best(List<Part> parts, LongHeap waiting, int most) {
        PriorityQueue<Near> best = new PriorityQueue<>(BEST_FIRST.reversed());
        double[] scores = new double[Blocks.LONGEST];
        while (waiting.size() > 0) {
            long next = waiting.pop();
            if (best.size() == most && atBest(next) < best.element().similarity()) {
                break;
            }
            score(part(parts, (int) next), (int) next, scores, best, most);
        }
        List<Near> sorted = new ArrayList<>(best);
        sorted.sort(BEST_FIRST);
        return sorted;
    }

    private static void score(Part part, int number, double[] scores, PriorityQueue<Near> best, int most) {
        int block = number - part.firstBlock();
        part.ready(block).score(part.blocks(), block, scores);
        int start = part.blocks().start(block);
        for (int doc = start; doc < part.blocks().end(block); doc++) {
            boolean full = best.size() == most;
            double score = scores[doc - start];
            if (part.accepted().get(doc) && (!full || score >= best.element().similarity())) {
                Near near = new Near(
                        part.docBase() + doc, score, part.blocks().columns().order()[doc]);
                if (!full || BEST_FIRST.compare(near, best.element()) < 0) {
                    best.add(near);
                }
                if (best.size() > most) {
                    best.remove();
                }
            }
        }
    }

    /** The smallest number first: the more alike at best, the smaller; never less alike than it is, for lack of digits. */
    private static long waiting(double atBest, int block) {
        return (long) -Float.floatToIntBits(Math.nextUp((float) atBest)) << Integer.SIZE | block;
    }

    private static double atBest(long waiting) {
        return Float.intBitsToFloat((int) -(waiting >> Integer.SIZE));
    }

    private static Part part(List<Part> parts, int number) {
        int at = parts.size() - 1;
        while (parts.get(at).firstBlock() > number) {
            at--;
        }
        return parts.get(at);
    }

    private List<Part> parts(Asked asked, Query filter) throws IOException {
        Weight weight = searcher.createWeight(searcher.rewrite(filter), ScoreMode.COMPLETE_NO_SCORES, 1);
        List<Part> parts = new ArrayList<>();
        int firstBlock = 0;
        for (LeafReaderContext leaf : searcher.getIndexReader().leaves()) {
            Blocks blocks = cache.of(leaf.reader());
            parts.add(new Part(blocks, Accepted.of(weight, leaf), leaf.docBase, firstBlock, ready(asked, blocks)));
            firstBlock += blocks.count();
        }
        return parts;
    }

    private static Asked.Ready[] ready(Asked asked, Blocks blocks) {
        Asked.Ready[] ready = new Asked.Ready[blocks.kinds()];
        for (int block = 0; block < blocks.count(); block++) {
            if (block == 0 || blocks.kind(block) != blocks.kind(block - 1)) {
                ready[blocks.kind(block)] = asked.ready(blocks, block);
            }
        }
        return ready;
    }
}
