package org.tunica.watching;

import java.util.List;
import org.tunica.knowledge.Knowledge;
import org.tunica.statistics.ManyLooks;

/**
 * The numbers by which rules in use are watched; each is a quantity of knowledge/ with source and standing.
 *
 * @param looks how often somebody looks, and how often a false alarm may come
 * @param minCases fewest cases of a stretch of which shares are compared
 * @param minShiftShare smallest difference of two shares worth a look
 * @param minCards fewest answered cards of which the share set aside is judged
 * @param frequentShare share of cases from which on a rule speaks often
 * @param overriddenShare share of cards set aside above which a rule that speaks often is told of
 * @param reviewSoonDays days before a review falls due from which on it is listed
 */
public record WatchNumbers(
        ManyLooks looks,
        int minCases,
        double minShiftShare,
        int minCards,
        double frequentShare,
        double overriddenShare,
        int reviewSoonDays) {
    /** The ids of knowledge/ that are read here. */
    public static final List<String> IDS = List.of(
            "watch.false-alarms.max",
            "watch.looks.per-year",
            "watch.cases.min",
            "watch.shift.min",
            "watch.cards.min",
            "watch.frequent.min",
            "watch.overridden.max",
            "watch.review-soon.max");

    /** The numbers of a release. */
    public static WatchNumbers of(Knowledge knowledge) {
        double[] v = IDS.stream().mapToDouble(knowledge::value).toArray();
        return new WatchNumbers(new ManyLooks(v[0], (int) v[1]), (int) v[2], v[3], (int) v[4], v[5], v[6], (int) v[7]);
    }
}
