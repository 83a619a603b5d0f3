package org.tunica.treatment;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Word;

/** Values in words. What is not recorded says so: a gap in a note must be seen. */
final class Says {
    static final String NOT_RECORDED = "not recorded";

    private Says() {}

    static String number(OptionalDouble value, String unit) {
        return value.isPresent() ? Rounded.text(value.getAsDouble()) + " " + unit : NOT_RECORDED;
    }

    static String count(OptionalInt value) {
        return value.isPresent() ? Integer.toString(value.getAsInt()) : NOT_RECORDED;
    }

    static String text(Optional<String> text) {
        return text.orElse(NOT_RECORDED);
    }

    static String word(Optional<? extends Word> word) {
        return word.map(Says::word).orElse(NOT_RECORDED);
    }

    static String word(Word word) {
        return word.word().replace('-', ' ');
    }

    static String flag(Optional<Boolean> flag, String yes, String no) {
        return flag.map(known -> known ? yes : no).orElse(NOT_RECORDED);
    }

    static String words(Collection<? extends Word> words) {
        return words.stream().map(Says::word).collect(Collectors.joining(", "));
    }

    /** Left and right are shouted, for they are the words a mistake is made with. */
    static String side(Limb.Side side) {
        return side.word().toUpperCase(Locale.ROOT);
    }
}
