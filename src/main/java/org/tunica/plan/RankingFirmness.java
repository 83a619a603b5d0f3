package org.tunica.plan;

import org.tunica.casefile.Word;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Standing;

/**
 * Whether a ranking holds, as a fact for rules and programs that come after it.
 *
 * @param state of the technique ranked first
 * @param familyState of its family: which fibre or which drug of one family leads is seldom worth a dispute
 * @param limit id of the limit it is held against
 * @param leastShare share of draws in which the option ranked first must lead
 * @param source of the limit
 * @param standing how well the limit is supported
 */
public record RankingFirmness(
        State state, State familyState, String limit, double leastShare, String source, Standing standing) {
    /** Id of the limit in knowledge/criteria.yaml. */
    public static final String LIMIT = "firm.share.least";

    /** Whether a ranking holds. */
    public enum State implements Word {
        /** The option ranked first leads often enough, and no technique waits for a measurement. */
        FIRM,
        NOT_FIRM,
        /** Nothing is ranked, whatever the errors of the measurements. */
        NONE,
        /** Nobody asked yet. */
        NOT_COMPUTED
    }

    static RankingFirmness notComputed(Quantity limit) {
        return new RankingFirmness(
                State.NOT_COMPUTED,
                State.NOT_COMPUTED,
                limit.id(),
                limit.value(),
                limit.provenance().source(),
                limit.provenance().standing());
    }

    /** The same limit with what was found. */
    public RankingFirmness found(State found, State ofFamily) {
        return new RankingFirmness(found, ofFamily, limit, leastShare, source, standing);
    }
}
