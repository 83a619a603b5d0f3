package org.tunica.rules;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.tunica.casefile.Word;

/** What a field says about an option: a number, a word, yes or no, a set of words, or nothing. */
public sealed interface Answer {
    /** Nothing is recorded. */
    record Unknown() implements Answer {}

    /** A number in the unit of its field. */
    record Number(double value) implements Answer {}

    /** A word of a closed list. */
    record OneWord(String word) implements Answer {}

    /** Yes or no. */
    record Flag(boolean holds) implements Answer {}

    /** A set of words. */
    record Words(Set<String> words) implements Answer {}

    /** The one unknown. */
    Answer UNKNOWN = new Unknown();

    static Answer of(OptionalDouble number) {
        return number.isPresent() ? new Number(number.getAsDouble()) : UNKNOWN;
    }

    static Answer ofWord(Optional<? extends Word> word) {
        return word.<Answer>map(known -> new OneWord(known.word())).orElse(UNKNOWN);
    }

    static Answer ofFlag(Optional<Boolean> flag) {
        return flag.<Answer>map(Flag::new).orElse(UNKNOWN);
    }

    static Answer ofSet(Optional<? extends Set<String>> words) {
        return words.<Answer>map(known -> new Words(Set.copyOf(known))).orElse(UNKNOWN);
    }

    /** The answer as people read it. */
    default String says() {
        if (this instanceof Number number) {
            return Plain.number(number.value());
        }
        if (this instanceof OneWord word) {
            return word.word();
        }
        if (this instanceof Flag flag) {
            return flag.holds() ? "yes" : "no";
        }
        if (this instanceof Words words) {
            return words.words().isEmpty()
                    ? "none"
                    : String.join(", ", words.words().stream().sorted().toList());
        }
        return "not recorded";
    }
}
