package org.tunica.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.knowledge.Family;

/**
 * One technique for one segment: how it stands and why.
 *
 * @param rank 1 is first; absent when not ranked
 * @param firstPlaceShare share of draws over errors, models, rates and weights in which it leads, 0 to 1; absent when not
 *     ranked
 * @param says the technique in words
 * @param why the standing in one line
 * @param score points of the ranking; absent when not ranked
 * @param scoreTree how the points come about
 * @param tie why it stands before the next, when the two are even on standing and points
 * @param reasons what speaks for, against, and excludes; findings last
 * @param needs what must be measured first, and which rule asks
 */
public record OptionAdvice(
        OptionalInt rank,
        OptionalDouble firstPlaceShare,
        String technique,
        String says,
        Family family,
        OptionStanding standing,
        String why,
        OptionalDouble score,
        Optional<Score> scoreTree,
        Optional<TieAdvice> tie,
        SettingsAdvice settings,
        Predicted predicted,
        List<Reason> reasons,
        List<Reason> cautions,
        List<Reason> needs) {

    OptionAdvice withRank(int newRank) {
        return with(OptionalInt.of(newRank), firstPlaceShare, tie);
    }

    /** The same with the share of draws in which it leads. */
    public OptionAdvice withFirstPlaceShare(double share) {
        return with(rank, OptionalDouble.of(share), tie);
    }

    OptionAdvice withTie(TieAdvice newTie) {
        return with(rank, firstPlaceShare, Optional.of(newTie));
    }

    /** The same outside any ranking. */
    OptionAdvice unranked() {
        return unranked(reasons, cautions, needs);
    }

    /** The same, saying only what no number that is still awaited can change. */
    OptionAdvice certain() {
        return unranked(
                reasons.stream().filter(reason -> reason.inDoubt().isEmpty()).toList(), List.of(), List.of());
    }

    private OptionAdvice unranked(List<Reason> newReasons, List<Reason> newCautions, List<Reason> newNeeds) {
        return new OptionAdvice(
                OptionalInt.empty(),
                OptionalDouble.empty(),
                technique,
                says,
                family,
                standing,
                why,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                settings,
                predicted,
                newReasons,
                newCautions,
                newNeeds);
    }

    private OptionAdvice with(OptionalInt newRank, OptionalDouble newShare, Optional<TieAdvice> newTie) {
        return new OptionAdvice(
                newRank, newShare, technique, says, family, standing, why, score, scoreTree, newTie, settings,
                predicted, reasons, cautions, needs);
    }
}
