package org.tunica.cli;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Word;

/** A word of a closed list after an option. */
final class WordOption {
    private WordOption() {}

    /** @throws FaultyInput when it is none of them */
    static <E extends Enum<E> & Word> E of(String option, String written, Class<E> words) {
        return Arrays.stream(words.getEnumConstants())
                .filter(word -> word.word().equals(written))
                .findFirst()
                .orElseThrow(() -> new FaultyInput(
                        "input", List.of(new Fault(option, "\"" + written + "\" is none of " + spelled(words)))));
    }

    private static <E extends Enum<E> & Word> String spelled(Class<E> words) {
        return Arrays.stream(words.getEnumConstants()).map(Word::word).collect(Collectors.joining(", "));
    }
}
