package org.tunica.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hazards and intended use are read whole or refused. */
class SafetyTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    hazards.yaml | HZ-01: | HZ-1: | HZ-1.hazard: must be called by HZ- and two digits
                    hazards.yaml | cause: | causes: | HZ-01.cause: must be given
                    hazards.yaml | limits: | limit: | HZ-01.limit: is not a field of this object; did you mean "limits"?
                    intended-use.yaml | users: | user: | users: at least one must be given
                    intended-use.yaml | notFor: | not for: | not for: is not a field of this object; did you mean "notFor"?
                    """)
    void onePlantedFault_isNamed(String file, String old, String changed, String says) {
        String path = "knowledge/" + file;
        List<String> faults = new Planted().change(path, old, changed).faults();
        assertTrue(faults.stream().anyMatch(fault -> fault.startsWith(path) && fault.contains(says)), faults::toString);
    }

    @Test
    void aReleaseWithoutIntendedUse_isRefused() {
        assertEquals(
                List.of("knowledge/intended-use.yaml: is missing"),
                new Planted().remove("knowledge/intended-use.yaml").faults());
    }

    @Test
    void shipped_saysWhatItIsNotFor() {
        IntendedUse use = Knowledge.of(Bundle.shipped()).intendedUse();
        assertTrue(use.notFor().stream().anyMatch(text -> text.startsWith("emergencies")), use::toString);
    }
}
