package org.tunica.outcomes;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.tunica.treatment.Complication;

/** Counts the outcomes of one group; what is too few to tell stays hidden. */
final class Tally {
    private final OutcomeNumbers numbers;
    private final SmallGroups small;

    Tally(OutcomeNumbers numbers) {
        this.numbers = numbers;
        this.small = new SmallGroups(numbers.k());
    }

    List<ClosedAt> closed(List<SegmentOutcome> group) {
        return numbers.horizons().stream()
                .map(horizon -> new ClosedAt(horizon, closed(seenAt(group, horizon), horizon)))
                .toList();
    }

    /** Those that a scan in the window of a horizon told of. */
    static List<SegmentOutcome> seenAt(List<SegmentOutcome> group, Horizon horizon) {
        return group.stream().filter(one -> one.closedAt(horizon).isPresent()).toList();
    }

    private Counted closed(List<SegmentOutcome> seen, Horizon horizon) {
        return small.few(SmallGroups.people(seen)) ? Counted.fewerThan(numbers.k()) : closedTold(seen, horizon);
    }

    /** How many were closed, of a group that may be told of. */
    Counted closedTold(List<SegmentOutcome> seen, Horizon horizon) {
        return told(seen, one -> one.closedAt(horizon).orElse(false));
    }

    private Counted told(List<SegmentOutcome> group, Predicate<SegmentOutcome> event) {
        return Counted.told((int) group.stream().filter(event).count(), group.size(), numbers.confidenceShare());
    }

    /** Of what other people hear of, few in a large group are hidden too. */
    Counted rare(List<SegmentOutcome> group, Predicate<SegmentOutcome> event) {
        List<SegmentOutcome> had = group.stream().filter(event).toList();
        return small.few(SmallGroups.people(had)) ? Counted.fewerThan(numbers.k(), group.size()) : told(group, event);
    }

    /** Of all, those of whom somebody asked at any visit what went wrong. */
    Counted asked(List<SegmentOutcome> group) {
        return rare(group, one -> one.complications().isPresent());
    }

    List<Went> complications(List<SegmentOutcome> group) {
        List<SegmentOutcome> asked =
                group.stream().filter(one -> one.complications().isPresent()).toList();
        if (small.few(SmallGroups.people(asked))) {
            return List.of();
        }
        return Arrays.stream(Complication.Kind.values())
                .filter(kind -> asked.stream().anyMatch(one -> had(one, kind).isPresent()))
                .map(kind -> new Went(
                        kind,
                        rare(asked, one -> had(one, kind).isPresent()),
                        rare(asked, one -> had(one, kind).filter(Tally::severe).isPresent())))
                .toList();
    }

    private static Optional<Complication> had(SegmentOutcome outcome, Complication.Kind kind) {
        return outcome.complications().orElse(List.of()).stream()
                .filter(one -> one.kind() == kind)
                .findFirst();
    }

    private static boolean severe(Complication complication) {
        return complication
                .grade()
                .filter(grade -> grade.compareTo(Complication.Grade.SEVERE) >= 0)
                .isPresent();
    }

    List<AtDeepEnd> deepEnd(List<SegmentOutcome> group) {
        List<SegmentOutcome> looked =
                group.stream().filter(one -> one.deepEnd().isPresent()).toList();
        if (small.few(SmallGroups.people(looked))) {
            return List.of();
        }
        return Arrays.stream(DeepEnd.values())
                .filter(end -> looked.stream().anyMatch(one -> worst(one, end)))
                .map(end -> new AtDeepEnd(end, rare(looked, one -> worst(one, end))))
                .toList();
    }

    private static boolean worst(SegmentOutcome outcome, DeepEnd end) {
        return outcome.deepEnd().filter(end::equals).isPresent();
    }
}
