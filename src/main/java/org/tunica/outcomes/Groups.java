package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.ClosureDefinition;

/**
 * Segments put into groups of one technique and one definition of closure each, and what of that may be told.
 *
 * @param told groups that may be told of, the largest first
 * @param notTold the others
 * @param segments how many there are together; absent where that would tell the size of another group
 * @param neverFollowed how many have no follow-up, and so no definition
 */
record Groups(List<Kind> told, List<NotTold> notTold, OptionalInt segments, Counted neverFollowed) {
    Groups {
        told = List.copyOf(told);
        notTold = List.copyOf(notTold);
    }

    /** Segments treated with one technique and counted by one definition of closure. */
    record Kind(String technique, ClosureDefinition closure, List<SegmentOutcome> segments) {}

    static Groups of(List<SegmentOutcome> outcomes, OutcomeNumbers numbers, Knowledge knowledge) {
        SmallGroups small = new SmallGroups(numbers.k());
        List<Kind> kinds = kinds(outcomes);
        List<SegmentOutcome> unfollowed =
                outcomes.stream().filter(one -> one.closure().isEmpty()).toList();
        SmallGroups.Hidden hidden = small.hidden(Stream.concat(
                        kinds.stream().map(kind -> SmallGroups.people(kind.segments())),
                        Stream.of(SmallGroups.people(unfollowed)))
                .toList());
        List<Kind> told = new ArrayList<>();
        List<NotTold> notTold = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            if (hidden.groups().contains(i)) {
                notTold.add(notTold(kinds.get(i), small, knowledge));
            } else {
                told.add(kinds.get(i));
            }
        }
        boolean withheld = hidden.total() || hidden.groups().contains(kinds.size());
        return new Groups(
                told,
                notTold,
                hidden.total() ? OptionalInt.empty() : OptionalInt.of(outcomes.size()),
                small.few(SmallGroups.people(unfollowed))
                        ? Counted.fewerThan(numbers.k())
                        : withheld
                                ? Counted.withheld()
                                : Counted.told(unfollowed.size(), outcomes.size(), numbers.confidenceShare()));
    }

    private static List<Kind> kinds(List<SegmentOutcome> outcomes) {
        Map<String, Kind> kinds = new TreeMap<>();
        for (SegmentOutcome one : outcomes) {
            one.closure()
                    .ifPresent(closure -> kinds.computeIfAbsent(
                                    one.technique() + " " + closure.word(),
                                    name -> new Kind(one.technique(), closure, new ArrayList<>()))
                            .segments()
                            .add(one));
        }
        return kinds.values().stream()
                .sorted(Comparator.comparingInt(kind -> -kind.segments().size()))
                .toList();
    }

    private static NotTold notTold(Kind kind, SmallGroups small, Knowledge knowledge) {
        return new NotTold(
                kind.technique(),
                knowledge.technique(kind.technique()).says(),
                kind.closure(),
                small.few(SmallGroups.people(kind.segments())) ? OptionalInt.of(small.k()) : OptionalInt.empty());
    }
}
