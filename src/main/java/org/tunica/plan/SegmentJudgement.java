package org.tunica.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How the options of a segment stand and which leads, without the words: what is left of an advice when two of them are
 * compared. Points, near misses and how firm the ranking is are no part of it.
 *
 * @param ref of the segment
 * @param first id of the technique that leads; empty when nothing can be ranked
 * @param options in the order of the ids of their techniques
 */
public record SegmentJudgement(String ref, Optional<String> first, List<OptionJudgement> options) {
    public SegmentJudgement {
        options = List.copyOf(options);
    }

    /** What an advice comes to. */
    public static SegmentJudgement of(SegmentAdvice advice) {
        return new SegmentJudgement(
                advice.ref(),
                advice.options().stream()
                        .filter(option -> option.rank().equals(OptionalInt.of(1)))
                        .map(OptionAdvice::technique)
                        .findFirst(),
                advice.options().stream()
                        .map(OptionJudgement::of)
                        .sorted(Comparator.comparing(OptionJudgement::technique))
                        .toList());
    }

    /** The option of a technique, if this release knows it. */
    public Optional<OptionJudgement> option(String technique) {
        return options.stream()
                .filter(option -> option.technique().equals(technique))
                .findFirst();
    }
}
