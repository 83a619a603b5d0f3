package org.tunica.similar;

import java.util.List;

/**
 * An index of past segments that can be searched: beside the cases on this machine, or on an engine that many share. Whichever
 * it is, the answers are the same to the last digit. Safe for several threads.
 *
 * <p>A search throws {@link java.io.UncheckedIOException} when the index cannot be read.
 */
public interface SegmentIndex extends AutoCloseable {
    /** How many segments it holds. */
    int size();

    /** How many of them are made up. */
    int invented();

    /** The segments of a filter most like a question, the same in the order of their random ids. */
    Places nearest(Question question, SimilarFilter filter, int most);

    /** The segments whose notes fit some words best (BM25 with the usual constants); each word must occur. */
    Places byWords(String words, SimilarFilter filter, int most);

    @Override
    void close();

    /**
     * Where a past segment that was found stands, and how well it fits.
     *
     * @param where its case stands in its source
     * @param place of the segment among the treated ones of its case, from 0
     * @param score likeness from 0 to 1, or how well its notes fit some words
     */
    record At(long where, int place, double score) {}

    /**
     * What was found.
     *
     * @param best best first
     * @param considered how many segments passed the filter
     * @param tooLittleKnown how many of them have too little in common with the question
     */
    record Places(List<At> best, int considered, int tooLittleKnown) {
        public Places {
            best = List.copyOf(best);
        }
    }
}
