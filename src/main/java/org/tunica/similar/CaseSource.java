package org.tunica.similar;

import java.util.List;
import org.tunica.pastcases.PastCase;

/** Where past cases come from: a file, a generator, a list. Each has a place at which it can be asked for again. */
public interface CaseSource {
    /** Whether it is made up. */
    boolean invented();

    /** What it is, in words for people. */
    String says();

    /** Different whenever any of its cases is different. */
    String digest();

    /**
     * Hands over every case with its place.
     *
     * @throws org.tunica.casefile.FaultyInput when one of them cannot be read
     */
    void each(Taker taker);

    /** Ids of cases that cannot be read and were therefore not handed over, once {@link #each} is done. */
    default List<String> leftOut() {
        return List.of();
    }

    /** The case at a place. */
    PastCase at(long where);

    /** The cases at some places, in their order; a source far away is asked once for all of them. */
    default List<PastCase> at(List<Long> wheres) {
        return wheres.stream().map(where -> at(where.longValue())).toList();
    }

    /** Takes one case. */
    interface Taker {
        void take(long where, PastCase pastCase);
    }
}
