package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.tunica.knowledge.PublishedRate;
import org.tunica.statistics.CusumDesign;
import org.tunica.statistics.CusumLimit;
import org.tunica.statistics.CusumWish;
import org.tunica.statistics.InControl;
import org.tunica.statistics.OutcomeCusum;
import org.tunica.statistics.RiskedOutcome;

/**
 * Watches results at one year. Segments stand in the order of their years, and within a year in the order of the base, which knows
 * no days. Only those that a scan told of at one year count: to count early failures of people who then stayed away, but not the
 * closed veins of others who did, would make results look worse than they are.
 */
final class Watcher {
    /** Simulated charts for one limit; a share of 0.05 is then known to half of a hundredth. */
    private static final int RUNS = 2_000;

    private final OutcomeNumbers numbers;
    private final PublishedRisk risk;
    private final SmallGroups small;
    private final long seed;

    Watcher(OutcomeNumbers numbers, PublishedRisk risk, long seed) {
        this.numbers = numbers;
        this.risk = risk;
        this.small = new SmallGroups(numbers.k());
        this.seed = seed;
    }

    /** Those of a group that stand on its chart, in order. */
    List<SegmentOutcome> charted(List<SegmentOutcome> group) {
        return Tally.seenAt(group, numbers.year()).stream()
                .filter(one -> one.year().isPresent() && risk.of(one).isPresent())
                .sorted(Comparator.comparingInt(one -> one.year().orElseThrow()))
                .toList();
    }

    /** The chart; absent where too few stand on it. */
    Optional<Watch> of(List<SegmentOutcome> group) {
        List<SegmentOutcome> charted = charted(group);
        if (charted.isEmpty() || small.few(SmallGroups.people(charted))) {
            return Optional.empty();
        }
        List<RiskedOutcome> outcomes = charted.stream().map(this::risked).toList();
        CusumLimit worse = limit(outcomes, numbers.worseOddsRatio());
        CusumLimit better = limit(outcomes, numbers.betterOddsRatio());
        OutcomeCusum chart = OutcomeCusum.of(
                outcomes,
                new CusumDesign(numbers.worseOddsRatio(), numbers.betterOddsRatio(), worse.limit(), better.limit()));
        return Optional.of(new Watch(
                chart.failures(),
                chart.predictedFailures(),
                behind(charted, PublishedRate::id),
                behind(charted, rate -> rate.provenance().source()),
                chart,
                worse,
                better,
                signals(chart, charted)));
    }

    private RiskedOutcome risked(SegmentOutcome outcome) {
        return new RiskedOutcome(
                risk.of(outcome).orElseThrow().failureProbability(),
                !outcome.closedAt(numbers.year()).orElseThrow());
    }

    private CusumLimit limit(List<RiskedOutcome> outcomes, double oddsRatio) {
        List<Double> mix =
                outcomes.stream().map(RiskedOutcome::failureProbability).toList();
        return CusumLimit.of(
                new CusumWish.FalseAlarms(numbers.falseAlarmShare(), outcomes.size()),
                oddsRatio,
                new InControl(mix, RUNS, seed));
    }

    private List<String> behind(List<SegmentOutcome> charted, Function<PublishedRate, String> what) {
        Set<String> ids = new TreeSet<>();
        charted.forEach(one -> risk.of(one).orElseThrow().rates().forEach(rate -> ids.add(what.apply(rate))));
        return List.copyOf(ids);
    }

    private static List<Watch.Signal> signals(OutcomeCusum chart, List<SegmentOutcome> charted) {
        List<Watch.Signal> signals = new ArrayList<>();
        chart.signals()
                .forEach(signal -> signals.add(new Watch.Signal(
                        signal.side(),
                        signal.caseNumber(),
                        year(charted, signal.caseNumber()),
                        signal.sinceCaseNumber(),
                        year(charted, signal.sinceCaseNumber()))));
        return signals;
    }

    private static int year(List<SegmentOutcome> charted, int number) {
        return charted.get(number - 1).year().orElseThrow();
    }
}
