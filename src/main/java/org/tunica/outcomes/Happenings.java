package org.tunica.outcomes;

import java.util.List;
import java.util.stream.Stream;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.treatment.ClosureDefinition;

/** Sums up what happened to groups of treated segments. Safe for several threads. */
public final class Happenings {
    private final Knowledge knowledge;
    private final OutcomeNumbers numbers;
    private final Tally tally;
    private final Curves curves;

    /** With the definitions of a release. */
    public Happenings(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.numbers = OutcomeNumbers.of(knowledge);
        this.tally = new Tally(numbers);
        this.curves = new Curves(numbers);
    }

    /** How many of the nearest segments are counted. */
    public int nearest() {
        return numbers.nearest();
    }

    /** What happened to the past segments most like one that was asked about. */
    public WhatHappened ofNearest(List<SegmentOutcome> outcomes) {
        return of(outcomes, List.of(Cautions.ALIKE));
    }

    /** What happened to segments that were asked for. */
    public WhatHappened of(List<SegmentOutcome> outcomes) {
        return of(outcomes, List.of());
    }

    private WhatHappened of(List<SegmentOutcome> outcomes, List<String> cautions) {
        Groups groups = Groups.of(outcomes, numbers, knowledge);
        return new WhatHappened(
                groups.segments(),
                outcomes.stream().anyMatch(SegmentOutcome::invented),
                groups.told().stream().map(this::technique).toList(),
                groups.notTold(),
                groups.neverFollowed(),
                Stream.concat(cautions.stream(), Cautions.always(numbers.k())).toList());
    }

    /** The same in a sentence for each technique, at one year. */
    public List<String> words(WhatHappened happened) {
        return new HappenedWords(numbers).of(happened);
    }

    TechniqueOutcome technique(Groups.Kind kind) {
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
