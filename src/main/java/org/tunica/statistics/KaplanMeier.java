package org.tunica.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The share of cases free of an event over time, by the product-limit estimate (Kaplan and Meier, J Am Stat Assoc
 * 1958;53:457-481). Cases leave it unseen (censored) without counting as events; at a tie the events come first. It holds only
 * where leaving has nothing to do with the event.
 *
 * @param steps every day on which an event or a last look fell, in order
 * @param cases all cases
 * @param events all events
 * @param confidenceShare how often limits hold the true share, such as 0.95
 */
public record KaplanMeier(List<SurvivalStep> steps, int cases, int events, double confidenceShare) {
    private static final double HALF = 0.5;

    /** One half reached as a product of fractions may miss it in the last digit. */
    private static final double ROUNDING = 1e-12;

    public KaplanMeier {
        steps = List.copyOf(steps);
    }

    /** @throws IllegalArgumentException without any case */
    public static KaplanMeier of(List<FollowedCase> followed, double confidenceShare) {
        Checked.atLeast("followed", followed.size(), 1);
        Checked.properShare("confidenceShare", confidenceShare);
        double deviations = new NormalDistribution().inverseCumulativeProbability((1 + confidenceShare) / 2);
        Map<Integer, List<FollowedCase>> byDay = followed.stream()
                .collect(Collectors.groupingBy(FollowedCase::daysAfter, TreeMap::new, Collectors.toList()));
        List<SurvivalStep> steps = new ArrayList<>();
        int atRisk = followed.size();
        double share = 1;
        double greenwoodSum = 0;
        for (Map.Entry<Integer, List<FollowedCase>> day : byDay.entrySet()) {
            int seen = day.getValue().size();
            int events =
                    (int) day.getValue().stream().filter(FollowedCase::event).count();
            share *= (double) (atRisk - events) / atRisk;
            greenwoodSum += events / ((double) atRisk * (atRisk - events));
            FreeShare free = FreeShare.of(share, greenwoodSum, deviations);
            steps.add(new SurvivalStep(day.getKey(), atRisk, events, seen - events, free));
            atRisk -= seen;
        }
        int events = steps.stream().mapToInt(SurvivalStep::events).sum();
        return new KaplanMeier(steps, followed.size(), events, confidenceShare);
    }

    /** The last day on which anything was seen. */
    public int lastDaysAfter() {
        return steps.get(steps.size() - 1).daysAfter();
    }

    /** Cases still followed and without the event at the start of a day. */
    public int atRisk(int daysAfter) {
        return steps.stream()
                .filter(step -> step.daysAfter() >= daysAfter)
                .mapToInt(SurvivalStep::atRisk)
                .findFirst()
                .orElse(0);
    }

    /** The curve on a day; empty after the last look unless nobody was free any more: nobody knows. */
    public Optional<SurvivalAt> at(int daysAfter) {
        FreeShare free = FreeShare.ALL;
        for (SurvivalStep step : steps) {
            if (step.daysAfter() <= daysAfter) {
                free = step.free();
            }
        }
        return daysAfter > lastDaysAfter() && free.freeShare() > 0
                ? Optional.empty()
                : Optional.of(new SurvivalAt(daysAfter, atRisk(daysAfter), free));
    }

    /** When half of the cases had the event. */
    public MedianTime median() {
        return new MedianTime(
                firstAtHalf(free -> OptionalDouble.of(free.freeShare())),
                firstAtHalf(FreeShare::lowShare),
                firstAtHalf(FreeShare::highShare));
    }

    private OptionalInt firstAtHalf(Function<FreeShare, OptionalDouble> curve) {
        return steps.stream()
                .filter(step -> curve.apply(step.free()).orElse(1) <= HALF + ROUNDING)
                .mapToInt(SurvivalStep::daysAfter)
                .findFirst();
    }
}
