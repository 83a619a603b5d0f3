package org.tunica.rules;

import java.util.Arrays;
import java.util.List;
import org.tunica.knowledge.GlossaryField;

/** An option with the answers of all fields, which conditions ask. Immutable. */
public final class OptionFacts implements AnswerBook {
    private final OptionKey key;

    /** By the place of the field in the glossary: two thousand conditions ask for each segment. */
    private final Answer[] answers;

    private final List<OtherSegment> elsewhere;

    OptionFacts(OptionKey key, Answer[] answers, List<OtherSegment> elsewhere) {
        this.key = key;
        this.answers = answers;
        this.elsewhere = List.copyOf(elsewhere);
    }

    /** An option of which nothing is known. */
    static OptionFacts ofNothing(int fieldsCount) {
        Answer[] answers = new Answer[fieldsCount];
        Arrays.fill(answers, Answer.UNKNOWN);
        return new OptionFacts(new OptionKey("segment", "technique"), answers, List.of());
    }

    /** The option's name. */
    public OptionKey key() {
        return key;
    }

    /** The same option with another answer to one field, to ask "what if". */
    public OptionFacts with(GlossaryField field, Answer answer) {
        Answer[] changed = answers.clone();
        changed[field.place()] = answer;
        return new OptionFacts(key, changed, elsewhere);
    }

    @Override
    public List<OtherSegment> elsewhere() {
        return elsewhere;
    }

    @Override
    public Answer answer(GlossaryField field) {
        return answers[field.place()];
    }
}
