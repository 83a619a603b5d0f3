package org.tunica.replay;

import java.util.List;
import java.util.function.Consumer;

/** The cases of a replay, handed out batch by batch in a fixed order. */
abstract sealed class ReplayedCases permits DemoCases, BaseCases, MadeUpCases {
    /** Small enough that little is lost when the program ends, large enough that a batch is worth a file. */
    static final int BATCH = 200;

    ReplayedCases() {}

    /** What they are, in words. */
    abstract String says();

    /** Whether they are of people who never were. */
    abstract boolean invented();

    /**
     * Hands out every batch.
     *
     * @param firstNumber number of the first batch
     * @return how many batches there were
     * @throws org.tunica.casefile.FaultyInput when they cannot be read
     */
    abstract int each(int firstNumber, Consumer<Batch> taker);

    /** All of some, one after the other. */
    static int each(List<ReplayedCases> all, Consumer<Batch> taker) {
        int batches = 0;
        for (ReplayedCases cases : all) {
            batches += cases.each(batches, taker);
        }
        return batches;
    }
}
