package org.tunica.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Word;

/**
 * How firm the ranking of a segment is (stochastic multicriteria acceptability analysis, SMAA-2). Shares are between 0 and
 * 1 and hold for the criteria named; they are no probabilities of healing.
 *
 * @param says in one line
 * @param draws number of draws of values and weights
 * @param judgedDraws how many different sets of measurements, each off by its error, went through all rules
 * @param preferences what the patient prefers and what it means for the weights; empty when nothing is recorded
 * @param families in which share of draws some technique of a family leads, largest first
 * @param options of every technique that is ranked in some draw, the most often first leading
 * @param whatWouldChange the smallest change of each single measurement with which another technique would lead, nearest
 *     first in standard deviations or shares of the value
 * @param measureNext what is not recorded and could change who leads, the most promising first
 */
public record FirmnessAdvice(
        String says,
        int draws,
        int judgedDraws,
        List<String> preferences,
        List<Share> families,
        List<Option> options,
        List<Change> whatWouldChange,
        List<Missing> measureNext) {

    /** What options are weighed by; each is worth 0 at its worst and 1 at its best. */
    public enum Criterion implements Word {
        WHOLE_WALL_KILL("killing the whole wall"),
        NERVE_SAFETY("sparing the nerve"),
        SKIN_SAFETY("sparing the skin"),
        DURABILITY("lasting closure"),
        SHORT_SESSION("a short session"),
        FEW_NEEDLES("few needles"),
        RULES("what the rules say for and against");

        private final String says;

        Criterion(String says) {
            this.says = says;
        }

        /** In words that fit behind "matters more than". */
        public String says() {
            return says;
        }
    }

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
            List<String> openCriteria) {}

    /**
     * A change of one measurement with which the technique ranked first would lose its place. Every rule and every computed
     * number is asked anew; the heat settings stay as chosen for what was measured.
     *
     * @param measurement JSON path without indexes
     * @param says in words
     * @param recorded as it stands in the case
     * @param at the nearest value found with which another technique leads
     * @param by the difference, with its sign
     * @param deviations the difference in standard deviations of the measurement; absent where none is known
     * @param leads the technique that would lead; absent when none could be ranked
     */
    public record Change(
            String measurement,
            String says,
            double recorded,
            double at,
            double by,
            String unit,
            OptionalDouble deviations,
            Optional<String> leads) {}

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
