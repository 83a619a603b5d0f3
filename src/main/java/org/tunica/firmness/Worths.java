package org.tunica.firmness;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Room;
import org.tunica.plan.FirmnessAdvice;

/**
 * What one technique is worth by each criterion, 0 to 1, ready to draw from.
 *
 * @param tiers standing in each judged draw, the smaller the better
 * @param rules worth of the points of the rules in each judged draw
 * @param costClass that the site gives the technique; empty when it gives none
 * @param rates the published rates behind {@code durability}
 * @param open in words, what is not known or not published and what is taken instead
 */
record Worths(
        String technique,
        int[] tiers,
        double[] rules,
        double killProbability,
        Margin nerve,
        Margin skin,
        Quantiles durability,
        double shortSessionShare,
        double fewNeedlesShare,
        Optional<Room.CostClass> costClass,
        List<FirmnessAdvice.Rate> rates,
        List<String> open) {

    /** Share of judged draws in which the technique may be ranked. */
    double rankedShare() {
        int ranked = 0;
        for (int tier : tiers) {
            ranked += tier < Weighing.NOT_RANKED ? 1 : 0;
        }
        return (double) ranked / tiers.length;
    }
}
