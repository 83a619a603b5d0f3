package org.tunica.invented;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.pastcases.PastCase;

class InventedLibraryTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final InventedLibrary LIBRARY = TUNICA.pastCases().inventedLibrary(7);

    @Test
    void everyCase_saysThatItIsInvented() {
        LIBRARY.cases(2_000).forEach(one -> {
            assertTrue(one.invented() && one.site().startsWith("site-inv"), one.id());
            assertTrue(one.notes().stream().allMatch(note -> note.startsWith("invented")), () -> "" + one.notes());
        });
    }

    @Test
    void caseIsTheSame_byItsSeedAndNumberAlone() {
        List<PastCase> inOrder = LIBRARY.cases(50).toList();
        assertEquals(inOrder.get(37), TUNICA.pastCases().inventedLibrary(7).at(37));
        assertTrue(!inOrder.get(37).equals(TUNICA.pastCases().inventedLibrary(8).at(37)));
        assertEquals(50, inOrder.stream().map(PastCase::id).distinct().count());
    }

    @Test
    void everyCase_isReadBackUnchanged() {
        LIBRARY.cases(3_000).forEach(one -> {
            byte[] line = TUNICA.pastCases().toLine(one).getBytes(StandardCharsets.UTF_8);
            assertEquals(one, TUNICA.pastCases().readPastCase(one.id(), line));
        });
    }
}
