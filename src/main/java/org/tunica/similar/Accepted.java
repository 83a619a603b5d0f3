package org.tunica.similar;

import java.io.IOException;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.search.MatchAllDocsQuery;
import org.apache.lucene.search.Scorer;
import org.apache.lucene.search.Weight;
import org.apache.lucene.util.Bits;
import org.apache.lucene.util.FixedBitSet;
import org.jspecify.annotations.Nullable;

/** Which segments of one part of the index are neither deleted nor filtered out. */
final class Accepted {
    /** Nothing when all are accepted. */
    private final @Nullable FixedBitSet bits;

    private Accepted(@Nullable FixedBitSet bits) {
        this.bits = bits;
    }

    static Accepted of(Weight filter, LeafReaderContext leaf) throws IOException {
        Bits live = leaf.reader().getLiveDocs();
        boolean all = filter.getQuery() instanceof MatchAllDocsQuery;
        if (all && live == null) {
            return new Accepted(null);
        }
        FixedBitSet bits = new FixedBitSet(leaf.reader().maxDoc());
        Scorer scorer = filter.scorer(leaf);
        if (scorer != null) {
            bits.or(scorer.iterator());
        }
        for (int doc = 0; live != null && doc < bits.length(); doc++) {
            if (!live.get(doc)) {
                bits.clear(doc);
            }
        }
        return new Accepted(bits);
    }

    boolean get(int doc) {
        return bits == null || bits.get(doc);
    }

    /** How many are accepted from one segment to before another, at most {@link Blocks#LONGEST} apart. */
    int count(int start, int end) {
        if (bits == null) {
            return end - start;
        }
        int first = start / Long.SIZE;
        long from = bits.getBits()[first] >>> start;
        int size = end - start;
        int over = (start & Long.SIZE - 1) + size - Long.SIZE;
        if (over > 0) {
            from |= bits.getBits()[first + 1] << -start;
        }
        return Long.bitCount(size == Long.SIZE ? from : from & (1L << size) - 1);
    }
}
