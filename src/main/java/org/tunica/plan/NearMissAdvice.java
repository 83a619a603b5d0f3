package org.tunica.plan;

import java.util.List;

/**
 * What a little difference of one number would have changed, so that a person sees which measurement to trust least.
 *
 * @param rule id of the rule that would turn
 * @param says what is the case when the rule speaks
 * @param techniques the techniques it would turn for
 * @param wouldNeed the difference, with the value recorded or computed
 * @param from how the techniques stand
 * @param to how they would stand
 * @param awayShare the distance to the limit as a share of it
 */
public record NearMissAdvice(
        String rule,
        String says,
        List<String> techniques,
        String wouldNeed,
        OptionStanding from,
        OptionStanding to,
        String limit,
        double awayShare) {

    NearMissAdvice with(List<String> newTechniques) {
        return new NearMissAdvice(rule, says, newTechniques, wouldNeed, from, to, limit, awayShare);
    }
}
