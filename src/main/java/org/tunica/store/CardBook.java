package org.tunica.store;

import java.util.Optional;

/** What cards spoke of, so that what people did with them can be told of each rule. */
public interface CardBook {
    /** Keeps what a card spoke of, once. */
    void keep(Actor by, GivenCard card);

    /** What a card spoke of; empty when it was never kept. */
    Optional<GivenCard> one(String card);
}
