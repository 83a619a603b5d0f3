package org.tunica.replay;

import java.util.List;
import org.tunica.physics.HeatQuestion;

/**
 * What the heat model has not answered yet of what a replay will ask, told from the first cases of each source.
 *
 * @param casesCount cases looked at
 * @param allCases about how many there are
 * @param missingCount answers that are missing for the cases looked at
 * @param sharedModel whether one answer serves both releases
 * @param some of the missing questions of the release before
 */
public record HeatAhead(
        long casesCount, long allCases, long missingCount, boolean sharedModel, List<HeatQuestion> some) {
    public HeatAhead {
        some = List.copyOf(some);
    }

    /** About how many are missing for all cases; fewer where many cases share a wall. */
    public long missingForAll() {
        return casesCount == 0 ? 0 : Math.round((double) missingCount * allCases / casesCount);
    }
}
