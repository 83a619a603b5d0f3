package org.tunica.archive;

import java.util.List;
import java.util.function.Consumer;
import org.tunica.pastcases.PastCase;

/** The past cases released at a store at one moment, to be gone through once. */
public final class Released {
    private final ReleasedCases source;

    Released(ReleasedCases source) {
        this.source = source;
    }

    /** Hands over every case that the rules in force can read. */
    public void to(Consumer<PastCase> taker) {
        source.each((where, pastCase) -> taker.accept(pastCase));
    }

    /** Ids of those they cannot read, once all were handed over. */
    public List<String> leftOut() {
        return source.leftOut();
    }
}
