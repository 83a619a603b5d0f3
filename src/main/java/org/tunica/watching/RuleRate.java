package org.tunica.watching;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Word;
import org.tunica.statistics.SharesApart.Counted;

/**
 * How often a rule speaks.
 *
 * @param lately in how many cases of the later stretch
 * @param before in how many of the earlier one
 * @param chanceProbability how often chance alone makes such a difference, raised for the number of rules; absent when the
 *     stretches are not compared
 */
public record RuleRate(
        String rule,
        String title,
        Counted lately,
        Optional<Counted> before,
        OptionalDouble chanceProbability,
        Drift drift) {
    /** What the comparison says. */
    public enum Drift implements Word {
        MORE_OFTEN,
        LESS_OFTEN,
        STEADY,
        TOO_FEW_CASES
    }

    /** Whether somebody should look. */
    public boolean alarms() {
        return drift == Drift.MORE_OFTEN || drift == Drift.LESS_OFTEN;
    }
}
