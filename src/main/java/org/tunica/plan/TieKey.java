package org.tunica.plan;

import java.util.Comparator;

/**
 * What settles the order of two options that are even on standing and points, one number after the other. Only exact ties
 * are settled: points go in steps of a half, and of two that differ by one step a rule has spoken, which no number here
 * outweighs. What is not known counts as the worst, so that leaving a value out never lifts an option.
 *
 * @param deathShare chance that the whole wall dies, 0 when not computed
 * @param charShare chance of char, 1 when not computed and the technique heats
 * @param nerveC temperature at the nerve that nine draws of ten keep, as warm as can be when not computed
 * @param durabilityShare mean of the published rates of lasting closure, 0 when there is none
 */
public record TieKey(double deathShare, double charShare, double nerveC, double durabilityShare) {
    /** Nothing is known. */
    public static final TieKey WORST = new TieKey(0, 1, Double.POSITIVE_INFINITY, 0);

    /** The better first. */
    public static final Comparator<TieKey> ORDER = Comparator.comparingDouble(TieKey::deathShare)
            .reversed()
            .thenComparingDouble(TieKey::charShare)
            .thenComparingDouble(TieKey::nerveC)
            .thenComparing(Comparator.comparingDouble(TieKey::durabilityShare).reversed());
}
