package org.tunica.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.tunica.casefile.Segment;

/**
 * Makes the facts of all options of one segment, asking what they share once.
 *
 * @param fields in the order of the glossary
 * @param ofOption places of the fields that depend on the technique
 * @param segmentFields what is asked of other segments
 */
record SegmentFacts(
        List<Function<Considered, Answer>> fields,
        int[] ofOption,
        Map<String, Function<Segment, Answer>> segmentFields) {

    List<OptionFacts> of(List<Considered> options) {
        if (options.isEmpty()) {
            return List.of();
        }
        Considered one = options.get(0);
        List<OtherSegment> elsewhere = elsewhere(one);
        Answer[] shared = fields.stream().map(field -> field.apply(one)).toArray(Answer[]::new);
        List<OptionFacts> facts = new ArrayList<>();
        for (Considered option : options) {
            Answer[] answers = shared.clone();
            for (int place : ofOption) {
                answers[place] = fields.get(place).apply(option);
            }
            facts.add(new OptionFacts(option.key(), answers, elsewhere));
        }
        return facts;
    }

    /** The other segments of the leg. */
    private List<OtherSegment> elsewhere(Considered option) {
        return option.limb().segments().stream()
                .filter(segment -> !segment.ref().equals(option.segment().ref()))
                .map(segment -> new OtherSegment(segment, segmentFields))
                .toList();
    }
}
