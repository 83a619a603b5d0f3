package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.treatment.ClosureDefinition;

/** Sums up what happened to groups of treated segments. Safe for several threads. */
public final class Happenings {
    private final Knowledge knowledge;
    private final OutcomeNumbers numbers;
    private final SmallGroups small;
    private final Tally tally;
    private final Curves curves;

    /** With the definitions of a release. */
    public Happenings(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.numbers = OutcomeNumbers.of(knowledge);
        this.small = new SmallGroups(numbers.k());
        this.tally = new Tally(numbers);
        this.curves = new Curves(numbers);
    }

    /** How many of the nearest segments are counted. */
    public int nearest() {
        return numbers.nearest();
    }

    /** What happened to the past segments most like one that was asked about. */
    public WhatHappened ofNearest(List<SegmentOutcome> outcomes) {
        return of(outcomes, Cautions.ALIKE);
    }

    /** What happened to segments that were asked for. */
    public WhatHappened of(List<SegmentOutcome> outcomes) {
        return of(outcomes, "");
    }

    private WhatHappened of(List<SegmentOutcome> outcomes, String caution) {
        List<Kind> kinds = kinds(outcomes);
        List<SegmentOutcome> unfollowed =
                outcomes.stream().filter(one -> one.closure().isEmpty()).toList();
        SmallGroups.Hidden hidden = small.hidden(Stream.concat(
                        kinds.stream().map(kind -> SmallGroups.people(kind.segments())),
                        Stream.of(SmallGroups.people(unfollowed)))
                .toList());
        List<TechniqueOutcome> told = new ArrayList<>();
        List<NotTold> notTold = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            if (hidden.groups().contains(i)) {
                notTold.add(notTold(kinds.get(i)));
            } else {
                told.add(technique(kinds.get(i)));
            }
        }
        return new WhatHappened(
                hidden.total() ? OptionalInt.empty() : OptionalInt.of(outcomes.size()),
                outcomes.stream().anyMatch(SegmentOutcome::invented),
                told,
                notTold,
                neverFollowed(unfollowed, outcomes.size(), hidden, kinds.size()),
                Stream.concat(Cautions.ALWAYS.stream(), Stream.of(caution, Cautions.hidden(numbers.k())))
                        .filter(text -> !text.isEmpty())
                        .toList());
    }

    /** The groups of one technique and one definition each, the largest first. */
    List<Kind> kinds(List<SegmentOutcome> outcomes) {
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

    /** Segments treated with one technique and counted by one definition of closure. */
    record Kind(String technique, ClosureDefinition closure, List<SegmentOutcome> segments) {}

    private NotTold notTold(Kind kind) {
        return new NotTold(
                kind.technique(),
                knowledge.technique(kind.technique()).says(),
                kind.closure(),
                small.few(SmallGroups.people(kind.segments())) ? OptionalInt.of(numbers.k()) : OptionalInt.empty());
    }

    private Counted neverFollowed(List<SegmentOutcome> unfollowed, int all, SmallGroups.Hidden hidden, int place) {
        if (hidden.groups().contains(place)) {
            return small.few(SmallGroups.people(unfollowed)) ? Counted.fewerThan(numbers.k()) : Counted.withheld();
        }
        return hidden.total() ? Counted.withheld() : Counted.told(unfollowed.size(), all, numbers.confidenceShare());
    }

    TechniqueOutcome technique(Kind kind) {
        List<SegmentOutcome> group = kind.segments();
        return new TechniqueOutcome(
                kind.technique(),
                knowledge.technique(kind.technique()).says(),
                kind.closure(),
                means(kind.closure()),
                group.size(),
                SmallGroups.people(group),
                tally.closed(group),
                curves.of(group),
                tally.asked(group),
                tally.complications(group),
                tally.deepEnd(group));
    }

    private String means(ClosureDefinition closure) {
        Quantity limit = knowledge.quantity(closure.limitId());
        return limit.says() + ": " + Said.number(limit.value()) + UcumWords.behind(limit.unit()) + " ["
                + limit.provenance().source() + ", "
                + limit.provenance().standing().word() + "]";
    }
}
