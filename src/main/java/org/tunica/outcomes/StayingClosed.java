package org.tunica.outcomes;

import java.util.List;
import java.util.OptionalInt;
import org.tunica.statistics.KaplanMeier;
import org.tunica.statistics.SurvivalAt;

/**
 * The share of treated veins that stayed closed.
 *
 * @param curve as far as it may be told
 * @param at the curve at each horizon it reaches
 * @param endsAfterDays the day after which fewer than k past cases were still followed, so that the curve is not told further; absent
 *     when all of it is
 */
public record StayingClosed(KaplanMeier curve, List<SurvivalAt> at, OptionalInt endsAfterDays) {
    public StayingClosed {
        at = List.copyOf(at);
    }
}
