package org.tunica.outcomes;

import java.util.List;
import java.util.stream.Stream;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.AnonymityLimits;

/**
 * The numbers by which outcomes are counted and watched; each is a quantity of knowledge/ with source and standing.
 *
 * @param horizons days at which closure is counted, in order
 * @param year the one of them at which results are held against published rates, most of which are of one year
 * @param k fewest past cases of a group that is told of
 * @param confidenceShare how often limits hold the true share
 * @param nearest how many of the nearest segments are counted
 * @param worseOddsRatio odds of failure that the chart of worse results watches for
 * @param betterOddsRatio likewise of better results
 * @param falseAlarmShare how many charts may speak though results are as predicted
 */
public record OutcomeNumbers(
        List<Horizon> horizons,
        Horizon year,
        int k,
        double confidenceShare,
        int nearest,
        double worseOddsRatio,
        double betterOddsRatio,
        double falseAlarmShare) {

    private static final List<String> OWN = List.of(
            "outcomes.confidence",
            "outcomes.nearest",
            "audit.cusum.worse",
            "audit.cusum.better",
            "audit.cusum.false-alarms");

    private static final String YEAR = "follow-up.horizon.year";

    private static final List<String> HORIZONS = List.of(
            "follow-up.horizon.week",
            "follow-up.horizon.six-weeks",
            "follow-up.horizon.half-year",
            YEAR,
            "follow-up.horizon.three-years");

    /** The ids of knowledge/ that are read here. */
    public static final List<String> IDS =
            Stream.concat(HORIZONS.stream(), OWN.stream()).toList();

    public OutcomeNumbers {
        horizons = List.copyOf(horizons);
    }

    /** The numbers of a release. */
    public static OutcomeNumbers of(Knowledge knowledge) {
        double[] v = OWN.stream().mapToDouble(knowledge::value).toArray();
        return new OutcomeNumbers(
                HORIZONS.stream().map(id -> Horizon.of(knowledge, id)).toList(),
                Horizon.of(knowledge, YEAR),
                AnonymityLimits.of(knowledge).k(),
                v[0],
                (int) v[1],
                v[2],
                v[3],
                v[4]);
    }
}
