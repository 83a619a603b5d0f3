package org.tunica.rules;

import java.util.HashMap;
import java.util.Map;

/** An option with the answers of all fields: the fact that rules are matched against. Immutable. */
public final class OptionFacts {
    private final OptionKey key;
    private final Map<String, Answer> answers;

    OptionFacts(OptionKey key, Map<String, Answer> answers) {
        this.key = key;
        this.answers = Map.copyOf(answers);
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
        return new OptionFacts(key, changed);
    }

    /**
     * What a field says about this option.
     *
     * @throws IllegalArgumentException when there is no such field
     */
    public Answer answer(String fieldId) {
        Answer answer = answers.get(fieldId);
        if (answer == null) {
            throw new IllegalArgumentException("no field " + fieldId);
        }
        return answer;
    }
}
