package org.tunica.meeting;

import java.util.Arrays;
import java.util.List;
import org.tunica.casefile.Word;

/**
 * Something to pick in a form.
 *
 * @param value as it is sent
 * @param says as it is read
 * @param picked whether it is picked
 */
public record Choice(String value, String says, boolean picked) {
    static <E extends Enum<E> & Word> List<Choice> of(Class<E> words, List<String> picked) {
        return Arrays.stream(words.getEnumConstants())
                .map(word -> new Choice(word.word(), word.word().replace('-', ' '), picked.contains(word.word())))
                .toList();
    }
}
