package org.tunica.rules;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.tunica.knowledge.GlossaryField;

/** An option with the answers of all fields, which conditions ask. Immutable. */
public final class OptionFacts implements AnswerBook {
    private final OptionKey key;

    /** By the place of the field in the glossary: two thousand conditions ask for each segment. */
    private final Answer[] answers;

    private final List<AnswerBook> elsewhere;

    OptionFacts(OptionKey key, Answer[] answers, List<? extends AnswerBook> elsewhere) {
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

    /**
     * An option made up of answers, to ask "what would the rules say".
     *
     * @param answers of every field of the glossary
     * @param elsewhere the other segments of the leg
     */
    public static OptionFacts of(
            OptionKey key, Map<GlossaryField, Answer> answers, List<? extends AnswerBook> elsewhere) {
        Answer[] inPlace = new Answer[answers.size()];
        answers.forEach((field, answer) -> inPlace[field.place()] = answer);
        return new OptionFacts(key, inPlace, elsewhere);
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

    /** The same option with other answers at some places. */
    OptionFacts with(int[] places, IntFunction<Answer> answer) {
        Answer[] changed = answers.clone();
        for (int place : places) {
            changed[place] = answer.apply(place);
        }
        return new OptionFacts(key, changed, elsewhere);
    }

    @Override
    public List<AnswerBook> elsewhere() {
        return elsewhere;
    }

    @Override
    public Answer answer(GlossaryField field) {
        return answers[field.place()];
    }
}
