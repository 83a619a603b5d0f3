package org.tunica.replay;

import java.util.function.Consumer;
import org.tunica.pastcases.CaseLine;
import org.tunica.pastcases.CaseProgress;

/** Released past cases, wherever they are kept; always in the same order while none comes or goes. */
@FunctionalInterface
public interface PastLines {
    /**
     * Hands over every line.
     *
     * @return how many
     * @throws org.tunica.casefile.FaultyInput when they cannot be read
     */
    long eachLine(Consumer<CaseLine> taker, CaseProgress progress);
}
