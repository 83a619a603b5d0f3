package org.tunica.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Counts by cause. Cases come one after the other, so the last one tells whether a case is new. */
final class CauseTally {
    private static final int MOST_EXAMPLES = 3;
    private static final String NUMBERS =
            "numbers moved: weights of the ranking, published rates, settings or computed models";

    private final Map<String, Tally> tallies = new TreeMap<>();

    /** Counts of one cause. */
    private static final class Tally {
        private final Optional<Turn> turn;
        private final Map<ChangedSegment.Kind, Counter> kinds = new EnumMap<>(ChangedSegment.Kind.class);
        private final Counter all = new Counter();
        private final List<String> examples = new ArrayList<>();
        private Gravity gravity = Gravity.REASONS;

        Tally(Optional<Turn> turn) {
            this.turn = turn;
        }

        void add(ReplayedSegment segment) {
            ChangedSegment change = segment.change();
            all.add(segment.caseRef());
            change.kinds()
                    .forEach(kind ->
                            kinds.computeIfAbsent(kind, same -> new Counter()).add(segment.caseRef()));
            if (all.segments() == 1 || change.gravity().compareTo(gravity) < 0) {
                gravity = change.gravity();
                examples.clear();
            }
            if (change.gravity() == gravity && examples.size() < MOST_EXAMPLES) {
                examples.add(segment.caseRef() + ", " + change.ref());
            }
        }

        Cause cause() {
            List<KindCount> counts = new ArrayList<>();
            kinds.forEach((kind, counter) -> counts.add(counter.of(kind)));
            return new Cause(
                    turn.map(Turn::rule),
                    turn.map(Turn::title).orElse(NUMBERS),
                    turn.map(Turn::act),
                    turn.map(Turn::limits).orElse(List.of()),
                    gravity,
                    all.segments(),
                    all.cases(),
                    counts,
                    examples);
        }
    }

    void add(ReplayedSegment segment) {
        List<Turn> turns = segment.change().turns();
        if (turns.isEmpty()) {
            tallies.computeIfAbsent("", none -> new Tally(Optional.empty())).add(segment);
        }
        turns.forEach(
                turn -> tallies.computeIfAbsent(turn.rule() + " " + turn.act(), same -> new Tally(Optional.of(turn)))
                        .add(segment));
    }

    /** The worst first, then what concerns most segments, then by rule. */
    List<Cause> causes() {
        return tallies.values().stream()
                .map(Tally::cause)
                .sorted(Comparator.comparing(Cause::gravity)
                        .thenComparing(Cause::segmentsCount, Comparator.reverseOrder()))
                .toList();
    }
}
