package org.tunica.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> KNOWN = List.of("great-saphenous", "small-saphenous", "tributary");

    @Test
    void to_takesTheWordWithTheFewestTypingErrors() {
        assertEquals(Optional.of("small-saphenous"), Nearest.to("smal-saphenus", KNOWN));
    }

    @Test
    void to_nothingIsNear() {
        assertEquals(Optional.empty(), Nearest.to("elephant-in-the-room", KNOWN));
    }

    @Test
    void to_halfOfTheLettersMayDiffer_notMore() {
        assertEquals(Optional.of("abcd"), Nearest.to("abxy", List.of("abcd")));
        assertEquals(Optional.empty(), Nearest.to("axyz", List.of("abcd")));
    }

    @Test
    void to_equallyNear_takesTheFirstOfTheAlphabet() {
        assertEquals(Optional.of("aa"), Nearest.to("ac", List.of("ab", "aa")));
    }

    @Test
    void to_noWordsOrAVeryLongOne() {
        assertEquals(Optional.empty(), Nearest.to("left", List.of()));
        assertEquals(Optional.empty(), Nearest.to("t".repeat(10_000), KNOWN));
    }

    @Test
    void hint() {
        assertEquals("; did you mean \"tributary\"?", Nearest.hint("tributry", KNOWN));
        assertEquals("", Nearest.hint("x", KNOWN));
    }
}
