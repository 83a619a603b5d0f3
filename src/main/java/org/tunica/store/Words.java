package org.tunica.store;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.tunica.casefile.Word;

/** Words of closed lists, as they stand in columns. */
final class Words {
    private Words() {}

    /** @throws org.tunica.casefile.FaultyInput when somebody else wrote the column */
    static <E extends Enum<E> & Word> E of(Class<E> words, String written) {
        return Arrays.stream(words.getEnumConstants())
                .filter(word -> word.word().equals(written))
                .findFirst()
                .orElseThrow(() -> Texts.fault(written, "is no word this program knows"));
    }

    /** A set of words, in the order of their list. */
    static <E extends Enum<E> & Word> Set<E> setOf(Class<E> words, String written) {
        return written.isEmpty()
                ? Set.of()
                : Arrays.stream(written.split(","))
                        .map(word -> of(words, word))
                        .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    static <E extends Enum<E> & Word> String written(Set<E> words) {
        return words.stream().sorted().map(Word::word).collect(Collectors.joining(","));
    }
}
