package org.tunica.watching;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.rules.Rule;
import org.tunica.statistics.SharesApart;
import org.tunica.statistics.SharesApart.Counted;

/** How often each rule speaks now, and before. */
final class FiringRates {
    private static final Comparator<RuleRate> ORDER = Comparator.comparing((RuleRate rate) -> !rate.alarms())
            .thenComparing(rate -> -rate.lately().share())
            .thenComparing(RuleRate::rule);

    private final List<Rule> rules;
    private final WatchNumbers numbers;

    FiringRates(List<Rule> rules, WatchNumbers numbers) {
        this.rules = rules;
        this.numbers = numbers;
    }

    /** Nothing when there is no case now. */
    List<RuleRate> of(List<Heard> now, List<Heard> before) {
        if (now.isEmpty()) {
            return List.of();
        }
        boolean compared = now.size() >= numbers.minCases() && before.size() >= numbers.minCases();
        return (compared ? compared(now, before) : uncompared(now, before))
                .stream().sorted(ORDER).toList();
    }

    private List<RuleRate> uncompared(List<Heard> now, List<Heard> before) {
        return rules.stream()
                .map(rule -> new RuleRate(
                        rule.id(),
                        rule.title(),
                        counted(rule, now),
                        before.isEmpty() ? Optional.empty() : Optional.of(counted(rule, before)),
                        OptionalDouble.empty(),
                        RuleRate.Drift.TOO_FEW_CASES))
                .toList();
    }

    private List<RuleRate> compared(List<Heard> now, List<Heard> before) {
        List<SharesApart> tests = rules.stream()
                .map(rule -> SharesApart.of(counted(rule, now), counted(rule, before)))
                .toList();
        List<Double> adjusted = numbers.looks()
                .adjusted(tests.stream().map(SharesApart::chanceProbability).toList());
        List<RuleRate> rates = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            SharesApart test = tests.get(i);
            rates.add(new RuleRate(
                    rules.get(i).id(),
                    rules.get(i).title(),
                    test.first(),
                    Optional.of(test.second()),
                    OptionalDouble.of(adjusted.get(i)),
                    drift(test, adjusted.get(i))));
        }
        return rates;
    }

    private RuleRate.Drift drift(SharesApart test, double adjusted) {
        boolean matters = Math.abs(test.differenceShare()) >= numbers.minShiftShare();
        if (!matters || !numbers.looks().speaks(adjusted)) {
            return RuleRate.Drift.STEADY;
        }
        return test.differenceShare() > 0 ? RuleRate.Drift.MORE_OFTEN : RuleRate.Drift.LESS_OFTEN;
    }

    private static Counted counted(Rule rule, List<Heard> heard) {
        int spoke = (int) heard.stream()
                .filter(advice -> advice.rules().contains(rule.id()))
                .count();
        return new Counted(spoke, heard.size());
    }
}
