package org.tunica.governance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.tunica.casefile.FaultyInput;

/**
 * Every pair of states. Draft, active and retired, and that neither active nor retired goes back, are of the HL7
 * implementation guide Canonical Resource Management Infrastructure 2.0.0-ballot; the states between are our own.
 */
class ReleaseStateTest {
    private static final Set<String> LEGAL = Set.of(
            "draft to in-review",
            "draft to withdrawn",
            "in-review to approved",
            "in-review to refused",
            "in-review to withdrawn",
            "approved to active",
            "approved to withdrawn",
            "active to retired");

    static Stream<Arguments> pairs() {
        return Stream.of(ReleaseState.values())
                .flatMap(from -> Stream.of(ReleaseState.values()).map(to -> Arguments.of(from, to)));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void aStep_isLegalOrRefusedWithAReason(ReleaseState from, ReleaseState to) {
        if (LEGAL.contains(from.word() + " to " + to.word())) {
            assertEquals(to, from.to(to, "1.0.0"));
        } else {
            FaultyInput fault = assertThrows(FaultyInput.class, () -> from.to(to, "1.0.0"));
            assertTrue(fault.getMessage().contains("release 1.0.0: is " + from.words() + " and "), fault::getMessage);
        }
    }

    @Test
    void theReasons_readAsSentences() {
        assertEquals("is active and is never draft again; make a new version", says("ACTIVE", "DRAFT"));
        assertEquals("is retired and stays so; make a new version", says("RETIRED", "ACTIVE"));
        assertEquals("is draft and must be approved before it can be active", says("DRAFT", "ACTIVE"));
        assertEquals("is in review and must be approved before it can be active", says("IN_REVIEW", "ACTIVE"));
        assertEquals("is approved and can be refused only while it is in review", says("APPROVED", "REFUSED"));
        assertEquals("is active and can only be retired: it has been in use", says("ACTIVE", "WITHDRAWN"));
        assertEquals("is approved and cannot become so again", says("APPROVED", "APPROVED"));
    }

    private static String says(String from, String to) {
        FaultyInput fault =
                assertThrows(FaultyInput.class, () -> ReleaseState.valueOf(from).to(ReleaseState.valueOf(to), "1.0.0"));
        return fault.faults().get(0).says();
    }
}
