package org.tunica.rules;

import java.util.List;
import org.tunica.knowledge.GlossaryField;

/** Something that answers the fields a rule may ask about: an option, or another segment of its leg. */
public interface AnswerBook {
    /**
     * What a field says.
     *
     * @throws IllegalArgumentException when there is no such field
     */
    Answer answer(GlossaryField field);

    /** The other segments of the leg; empty when there are none, or when asked of such a segment itself. */
    List<? extends AnswerBook> elsewhere();
}
