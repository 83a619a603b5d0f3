package org.tunica.outcomes;

import java.util.List;
import java.util.Optional;
import org.tunica.statistics.LogRank;
import org.tunica.treatment.ClosureDefinition;

/**
 * The curves of two techniques held against each other.
 *
 * @param techniques ids of the two
 * @param closure the definition both are counted by; absent where nothing was compared
 * @param logRank absent where nothing can be compared
 * @param says in words
 */
public record Compared(
        List<String> techniques, Optional<ClosureDefinition> closure, Optional<LogRank> logRank, String says) {
    public Compared {
        techniques = List.copyOf(techniques);
    }
}
