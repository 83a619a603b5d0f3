package org.tunica.rules;

import java.util.List;
import java.util.Map;

/** An option with the answers of all fields, which conditions ask. Immutable. */
public final class OptionFacts implements AnswerBook {
    private final OptionKey key;

    /** Where each field's answer stands; one map for all options of a release, which makes a look-up cheap. */
    private final Map<String, Integer> places;

    private final Answer[] answers;
    private final List<OtherSegment> elsewhere;

    OptionFacts(OptionKey key, Map<String, Integer> places, Answer[] answers, List<OtherSegment> elsewhere) {
        this.key = key;
        this.places = places;
        this.answers = answers;
        this.elsewhere = List.copyOf(elsewhere);
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
        Answer[] changed = answers.clone();
        changed[place(fieldId)] = answer;
        return new OptionFacts(key, places, changed, elsewhere);
    }

    @Override
    public List<OtherSegment> elsewhere() {
        return elsewhere;
    }

    @Override
    public Answer answer(String fieldId) {
        return answers[place(fieldId)];
    }

    private int place(String fieldId) {
        Integer place = places.get(fieldId);
        if (place == null) {
            throw new IllegalArgumentException("no field " + fieldId);
        }
        return place;
    }
}
