package org.tunica.outcomes;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.tunica.statistics.FollowedCase;
import org.tunica.statistics.KaplanMeier;
import org.tunica.statistics.SurvivalAt;

/** Curves of staying closed, each as far as enough past cases were still followed. */
final class Curves {
    private final OutcomeNumbers numbers;

    Curves(OutcomeNumbers numbers) {
        this.numbers = numbers;
    }

    /** The curve of a group; absent when too few of it were ever scanned. */
    Optional<StayingClosed> of(List<SegmentOutcome> group) {
        int[] lastDays = lastDays(group);
        if (lastDays.length < numbers.k()) {
            return Optional.empty();
        }
        KaplanMeier whole = KaplanMeier.of(cases(group), numbers.confidenceShare());
        int lastTold = lastDays[lastDays.length - numbers.k()];
        KaplanMeier told = upTo(lastTold, whole);
        List<SurvivalAt> at = numbers.horizons().stream()
                .filter(horizon -> horizon.daysAfter() <= lastTold)
                .flatMap(horizon -> told.at(horizon.daysAfter()).stream())
                .toList();
        boolean cut = lastTold < whole.lastDaysAfter();
        return Optional.of(new StayingClosed(told, at, cut ? OptionalInt.of(lastTold) : OptionalInt.empty()));
    }

    static List<FollowedCase> cases(List<SegmentOutcome> group) {
        return group.stream()
                .flatMap(one -> one.staying().stream())
                .map(staying -> new FollowedCase(staying.daysAfter(), staying.failed()))
                .toList();
    }

    /** For each past case that was scanned, in order: the last day on which a segment of it was still followed. */
    private static int[] lastDays(List<SegmentOutcome> group) {
        Map<String, Integer> last = new HashMap<>();
        group.forEach(
                one -> one.staying().ifPresent(staying -> last.merge(one.pastCase(), staying.daysAfter(), Math::max)));
        return last.values().stream().mapToInt(Integer::intValue).sorted().toArray();
    }

    private static KaplanMeier upTo(int lastDay, KaplanMeier whole) {
        return new KaplanMeier(
                whole.steps().stream()
                        .filter(step -> step.daysAfter() <= lastDay)
                        .toList(),
                whole.cases(),
                whole.events(),
                whole.confidenceShare());
    }
}
