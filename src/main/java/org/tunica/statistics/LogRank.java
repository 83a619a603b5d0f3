package org.tunica.statistics;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Whether two curves differ more than chance explains: at every day with an event, the events each group had against those it
 * would have had if both ran the same risk (Mantel, Cancer Chemother Rep 1966;50:163-170). Says that they differ, never why:
 * groups that were not drawn by lot differ in more than their treatment.
 *
 * @param first the first group
 * @param second the second group
 * @param chiSquare the statistic, one degree of freedom
 * @param chanceProbability how often chance alone makes a difference at least as large
 */
public record LogRank(Group first, Group second, double chiSquare, double chanceProbability) {

    /**
     * Events of a group.
     *
     * @param observed seen
     * @param expected to be seen if both groups ran the same risk
     */
    public record Group(int observed, double expected) {}

    /** The comparison; empty where no event fell while both groups were still followed, for then nothing is compared. */
    public static Optional<LogRank> of(List<FollowedCase> first, List<FollowedCase> second) {
        Checked.atLeast("first", first.size(), 1);
        Checked.atLeast("second", second.size(), 1);
        double expected = 0;
        double variance = 0;
        for (int day : eventDays(first, second)) {
            double atRiskFirst = atRisk(first, day);
            double atRisk = atRiskFirst + atRisk(second, day);
            double events = eventsOn(first, day) + eventsOn(second, day);
            double firstShare = atRiskFirst / atRisk;
            expected += events * firstShare;
            if (atRisk > 1) {
                variance += events * firstShare * (1 - firstShare) * (atRisk - events) / (atRisk - 1);
            }
        }
        if (variance <= 0) {
            return Optional.empty();
        }
        int seenFirst = events(first);
        int seenSecond = events(second);
        double chiSquare = (seenFirst - expected) * (seenFirst - expected) / variance;
        return Optional.of(new LogRank(
                new Group(seenFirst, expected),
                new Group(seenSecond, seenFirst + seenSecond - expected),
                chiSquare,
                1 - new ChiSquaredDistribution(1).cumulativeProbability(chiSquare)));
    }

    private static TreeSet<Integer> eventDays(List<FollowedCase> first, List<FollowedCase> second) {
        TreeSet<Integer> days = new TreeSet<>();
        Stream.concat(first.stream(), second.stream())
                .filter(FollowedCase::event)
                .forEach(seen -> days.add(seen.daysAfter()));
        return days;
    }

    private static long atRisk(List<FollowedCase> group, int day) {
        return group.stream().filter(one -> one.daysAfter() >= day).count();
    }

    private static long eventsOn(List<FollowedCase> group, int day) {
        return group.stream()
                .filter(one -> one.event() && one.daysAfter() == day)
                .count();
    }

    private static int events(List<FollowedCase> group) {
        return (int) group.stream().filter(FollowedCase::event).count();
    }
}
