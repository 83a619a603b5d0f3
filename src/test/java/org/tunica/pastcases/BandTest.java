package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BandTest {
    @Test
    void band_readsBackAsWritten() {
        for (String text : List.of("60-69", "under-40", "90-or-more", "0-0")) {
            assertEquals(Optional.of(text), Band.read(text).map(Band::toString));
        }
    }

    @Test
    void holds_bothEnds() {
        assertTrue(Band.between(60, 69).holds(60) && Band.between(60, 69).holds(69));
        assertFalse(Band.between(60, 69).holds(70)
                || Band.under(40).holds(40)
                || Band.orMore(90).holds(89));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "60", "69-60", "under-", "-5-9", "6000-6009", "60-69 ", "sixty"})
    void read_whatIsNoBand_isNothing(String text) {
        assertEquals(Optional.empty(), Band.read(text));
    }

    @Test
    void backwards_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> Band.between(5, 4));
    }
}
