package org.tunica.rules;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** An option with the answers of all fields: the fact that rules are matched against. Immutable. */
public final class OptionFacts implements AnswerBook {
    private final OptionKey key;
    private final Map<String, Answer> answers;
    private final List<AnswerBook> elsewhere;

    OptionFacts(OptionKey key, Map<String, Answer> answers, List<? extends AnswerBook> elsewhere) {
        this.key = key;
        this.answers = Map.copyOf(answers);
        this.elsewhere = List.copyOf(elsewhere);
    }

    /**
     * An option made up of answers, to ask "what would the rules say".
     *
     * @param answers of every field, by id
     * @param elsewhere the other segments of the leg
     */
    public static OptionFacts of(OptionKey key, Map<String, Answer> answers, List<? extends AnswerBook> elsewhere) {
        return new OptionFacts(key, answers, elsewhere);
    }

    /** The option's name. */
    public OptionKey key() {
        return key;
    }

    /**
     * The same option with another answer to one field, to ask "what if".
     *
     * @throws IllegalArgumentException when there is no such field
     */
    public OptionFacts with(String fieldId, Answer answer) {
        answer(fieldId);
        Map<String, Answer> changed = new HashMap<>(answers);
        changed.put(fieldId, answer);
        return new OptionFacts(key, changed, elsewhere);
    }

    @Override
    public List<AnswerBook> elsewhere() {
        return elsewhere;
    }

    @Override
    public Answer answer(String fieldId) {
        Answer answer = answers.get(fieldId);
        if (answer == null) {
            throw new IllegalArgumentException("no field " + fieldId);
        }
        return answer;
    }
}
