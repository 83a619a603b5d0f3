package org.tunica.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import org.tunica.plan.Advice;

/** Adds up batches in their order; what is held does not grow with the cases. */
final class Summing {
    /** A segment with its place over all cases, so that none of equal gravity jumps ahead. */
    private record Placed(ReplayedSegment segment, long place) {
        private static final Comparator<Placed> WORST_FIRST = Comparator.comparing(
                        (Placed one) -> one.segment().change().gravity())
                .thenComparing(one -> -one.segment().change().options().size())
                .thenComparing(Placed::place);
    }

    private final CauseTally causes = new CauseTally();
    private final Counter changed = new Counter();
    private final Map<ChangedSegment.Kind, Counter> kinds = new EnumMap<>(ChangedSegment.Kind.class);
    private final Map<Gravity, Integer> gravities = new EnumMap<>(Gravity.class);
    private final PriorityQueue<Placed> worst = new PriorityQueue<>(Placed.WORST_FIRST.reversed());
    private final List<Unreadable> unreadable = new ArrayList<>();
    private final Digest digest = new Digest();
    private int casesCount;
    private int segmentsCount;
    private int checkedCount;
    private int unreadableCount;
    private long places;

    void add(BatchResult batch) {
        digest.and(batch.cases());
        casesCount += batch.casesCount();
        segmentsCount += batch.segmentsCount();
        checkedCount += batch.checkedCount();
        batch.changed().forEach(this::add);
        unreadableCount += batch.unreadable().size();
        batch.unreadable().stream()
                .limit(ReplayResult.MOST_LISTED - unreadable.size())
                .forEach(unreadable::add);
    }

    private void add(ReplayedSegment segment) {
        changed.add(segment.caseRef());
        causes.add(segment);
        gravities.merge(segment.change().gravity(), 1, Integer::sum);
        segment.change()
                .kinds()
                .forEach(kind ->
                        kinds.computeIfAbsent(kind, same -> new Counter()).add(segment.caseRef()));
        worst.add(new Placed(segment, places++));
        if (worst.size() > ReplayResult.MOST_LISTED) {
            worst.remove();
        }
    }

    /** The result without its digest. */
    ReplayResult result(Advice.Release before, Advice.Release after, List<String> says, boolean invented) {
        return new ReplayResult(
                ReplayResult.FORMAT,
                Advice.CAUTION,
                before,
                after,
                new ReplayResult.Replayed(says, invented, casesCount, segmentsCount, checkedCount, digest.text()),
                changed.cases(),
                changed.segments(),
                segmentsCount - changed.segments(),
                kinds.entrySet().stream()
                        .map(entry -> entry.getValue().of(entry.getKey()))
                        .toList(),
                gravities.entrySet().stream()
                        .map(entry ->
                                new GravityCount(entry.getKey(), entry.getKey().says(), entry.getValue()))
                        .toList(),
                causes.causes(),
                worst.stream().sorted(Placed.WORST_FIRST).map(Placed::segment).toList(),
                unreadableCount,
                unreadable,
                ReplayResult.NOT_COMPARED,
                Optional.empty());
    }
}
