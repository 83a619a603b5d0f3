package org.tunica.pastcases;

import java.util.function.Consumer;

/** Goes through past cases once, however many there are. */
@FunctionalInterface
public interface EachCase {
    /** No case at all. */
    EachCase NONE = taker -> {};

    /** Hands every case over. */
    void to(Consumer<PastCase> taker);
}
