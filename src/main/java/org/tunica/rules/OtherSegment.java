package org.tunica.rules;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.GlossaryField;

/** Another segment of the leg, which answers only what was recorded of it: nothing of a technique is known there. */
record OtherSegment(Segment segment, Map<String, Function<Segment, Answer>> fields) implements AnswerBook {
    @Override
    public Answer answer(GlossaryField asked) {
        Function<Segment, Answer> field = fields.get(asked.id());
        if (field == null) {
            throw new IllegalArgumentException(asked.id() + " is no field of a segment");
        }
        return field.apply(segment);
    }

    @Override
    public List<AnswerBook> elsewhere() {
        return List.of();
    }
}
