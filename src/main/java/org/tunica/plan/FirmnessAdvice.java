package org.tunica.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Criterion;
import org.tunica.casefile.Room;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Standing;

/**
 * How firm the ranking of a segment is (stochastic multicriteria acceptability analysis, SMAA-2). Shares are between 0 and
 * 1 and hold for the criteria named; they are no probabilities of healing.
 *
 * @param firm whether the option ranked first leads in at least {@code leastShare} of the draws and no technique waits
 *     for a measurement before it can be judged
 * @param says the same in one line
 * @param leastShare below it the ranking is not firm
 * @param draws number of draws of values and weights
 * @param judgedDraws how many different sets of measurements, each off by its error, went through all rules
 * @param importance the order of criteria the case asks for, the most important first; empty for the usual order
 * @param preferences what that order means, whether cost is weighed, what the patient prefers, and what all that means for
 *     the weights; empty when nothing is recorded
 * @param families in which share of draws some technique of a family leads, largest first
 * @param options of every technique that is ranked in some draw, the most often first leading
 * @param whatWouldChange the smallest change of each single measurement with which another technique would lead, nearest
 *     first in standard deviations or shares of the value
 * @param measureNext what is not recorded and could change who leads, the most promising first
 */
public record FirmnessAdvice(
        boolean firm,
        String says,
        double leastShare,
        int draws,
        int judgedDraws,
        List<Criterion> importance,
        List<String> preferences,
        List<Share> families,
        List<Option> options,
        List<Change> whatWouldChange,
        List<Missing> measureNext) {

    /** A share of draws. */
    public record Share(String name, double drawShare) {}

    /** The mean weight of a criterion, 0 to 1. */
    public record Weight(Criterion criterion, double weightShare) {}

    /**
     * One technique over all draws.
     *
     * @param firstPlaceShare in which it leads
     * @param rankedShare in which it may be ranked at all
     * @param rankShares in which it is first, second and so on among these options
     * @param centralWeights the mean of the weights with which it leads; empty when it never does
     * @param firstWhen the same in words
     * @param confidenceFactor share of draws of values in which it leads with its central weights
     * @param winShares in which it comes before each other option
     * @param openCriteria of which nothing is known or published, with what is taken instead
     * @param rates the published rates behind its lasting closure
     * @param costClass that the site gives it, where cost is weighed
     */
    public record Option(
            String technique,
            double firstPlaceShare,
            double rankedShare,
            List<Double> rankShares,
            List<Weight> centralWeights,
            String firstWhen,
            OptionalDouble confidenceFactor,
            List<Share> winShares,
            List<String> openCriteria,
            List<Rate> rates,
            Optional<Room.CostClass> costClass) {}

    /**
     * A published rate of lasting closure.
     *
     * @param id in knowledge/rates.yaml
     * @param says what was counted
     * @param closedShare 0 to 1
     * @param months from treatment to the count
     * @param measuredWith with what it was measured, where one rate stands for several techniques of a family
     */
    public record Rate(
            String id,
            String says,
            double closedShare,
            double months,
            Optional<String> measuredWith,
            String source,
            Standing standing) {}

    /**
     * A change of one measurement with which the technique ranked first would lose its place. Every rule and every computed
     * number is asked anew. First the heat settings stay as chosen for what was measured; {@code sought} tells whether they
     * were sought anew.
     *
     * @param measurement JSON path without indexes
     * @param says in words
     * @param recorded as it stands in the case
     * @param at the nearest value found with which another technique leads
     * @param holdsAt the value nearest to it found with which the place is still held
     * @param by the difference, with its sign
     * @param deviations the difference in standard deviations of the measurement; absent where none is known
     * @param leads the technique that would lead; absent when none could be ranked
     * @param sought what the whole engine says of it
     */
    public record Change(
            String measurement,
            String says,
            double recorded,
            double at,
            double holdsAt,
            double by,
            String unit,
            OptionalDouble deviations,
            Optional<String> leads,
            Sought sought) {

        /** Whether heat settings were sought anew, and what came of it. */
        public enum Sought implements Word {
            /** The whole engine, asked at both values, agrees; or the measurement has no part in any heat setting. */
            CONFIRMED,
            /** Found with the settings kept; the whole engine was not asked. */
            SETTINGS_KEPT,
            /** Found by the whole engine, and not where settings kept would have it; both values are those of the engine. */
            SOUGHT_ANEW,
            /** With settings sought anew the place is held as far as {@code holdsAt}; it is lost with settings kept alone. */
            NOT_FOUND
        }

        /** The same measurement, judged by the whole engine. */
        public Change sought(Sought found, double lostAt, double heldAt, Optional<String> leader) {
            double factor = (lostAt - recorded) / (at - recorded);
            return new Change(
                    measurement,
                    says,
                    recorded,
                    lostAt,
                    heldAt,
                    by * factor,
                    unit,
                    deviations.isPresent() ? OptionalDouble.of(deviations.getAsDouble() * factor) : deviations,
                    leader,
                    found);
        }
    }

    /** The same with other changes. */
    public FirmnessAdvice with(List<Change> changes) {
        return new FirmnessAdvice(
                firm,
                says,
                leastShare,
                draws,
                judgedDraws,
                importance,
                preferences,
                families,
                options,
                List.copyOf(changes),
                measureNext);
    }

    /**
     * Something that is not recorded. Every answer it could have, numbers band by band between the limits of the rules, is
     * put to the rules, each counted alike: nobody knows how likely it is.
     *
     * @param noun what to measure or ask
     * @param waiting techniques that cannot be ranked without it
     * @param changesFirstShare share of the answers with which another technique leads than now; absent where a technique
     *     that waits cannot be judged before it is recorded, so that nobody can tell
     * @param couldLead techniques that lead with some answer
     */
    public record Missing(
            String noun, List<String> waiting, OptionalDouble changesFirstShare, List<String> couldLead) {}
}
