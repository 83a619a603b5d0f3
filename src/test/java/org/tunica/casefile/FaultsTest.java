package org.tunica.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FaultsTest {
    @Test
    void asManyAsAreListedAndOneMore() {
        Faults faults = new Faults();
        IntStream.range(0, Faults.MOST).forEach(i -> faults.add("line " + i, "is wrong"));
        faults.add("line 0", "is wrong");
        assertEquals(Faults.MOST, faults.count(), "a fault noted twice counts once");
        FaultyInput ended = assertThrows(FaultyInput.class, () -> faults.add("line x", "is wrong"));
        assertEquals(Faults.MOST + 1, ended.faults().size());
        assertEquals(
                "line x: there are more than 1000 faults; the reading ended here",
                ended.faults().get(Faults.MOST).toString());
    }

    @Test
    void aLongTextIsCut_andHalfOfACharacterIsShownAsItsCode() {
        String says = new Fault("file", "x".repeat(999) + "\ud83d\ude00").says();
        assertTrue(says.endsWith("x\\ud83d..."), says);
    }
}
