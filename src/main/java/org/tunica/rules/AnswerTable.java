package org.tunica.rules;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.tunica.knowledge.GlossaryField;

/**
 * How fields are answered, by id in a fixed order, and of which kind the answers are.
 *
 * @param <T> what is asked
 */
final class AnswerTable<T> {
    private final Map<String, Function<T, Answer>> answers = new LinkedHashMap<>();
    private final Map<String, GlossaryField.Kind> kinds = new LinkedHashMap<>();

    void number(String id, Function<T, OptionalDouble> read) {
        put(id, GlossaryField.Kind.NUMBER, asked -> Answer.of(read.apply(asked)));
    }

    void flag(String id, Function<T, Optional<Boolean>> read) {
        put(id, GlossaryField.Kind.FLAG, asked -> Answer.ofFlag(read.apply(asked)));
    }

    void word(String id, Function<T, Answer> read) {
        put(id, GlossaryField.Kind.WORD, read);
    }

    void set(String id, Function<T, Answer> read) {
        put(id, GlossaryField.Kind.SET, read);
    }

    /** Takes over the fields of a part, asked through the whole. */
    <P> void addAll(AnswerTable<P> part, Function<T, P> from) {
        part.answers.forEach((id, read) -> put(id, part.kinds.get(id), asked -> read.apply(from.apply(asked))));
    }

    private void put(String id, GlossaryField.Kind kind, Function<T, Answer> read) {
        answers.put(id, read);
        kinds.put(id, kind);
    }

    Map<String, Function<T, Answer>> answers() {
        return Collections.unmodifiableMap(answers);
    }

    Map<String, GlossaryField.Kind> kinds() {
        return Collections.unmodifiableMap(kinds);
    }
}
