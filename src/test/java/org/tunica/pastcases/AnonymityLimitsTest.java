package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;

/** A number that would make people easy to find, or nothing of a measurement, is refused before anything runs with it. */
class AnonymityLimitsTest {
    private static final String FILE = "knowledge/anonymity.yaml";

    @ParameterizedTest
    @CsvSource({
        "anonymity.step.dose, 0, must be more than 0",
        "anonymity.step.wall, -0.1, must be more than 0",
        "anonymity.k, 1, must be a whole number from 2",
        "anonymity.k.outside, 4.5, must be a whole number from 2",
        "anonymity.coarser, 1, must be a whole number from 2",
        "anonymity.age.band, 0, must be a whole number from 1",
        "anonymity.age.over, 20, must be more than anonymity.age.under",
        "anonymity.outcome.from, -1, must be a whole number from 0"
    })
    void aNumberOfNoUse_isNamedWithItsFile(String id, String value, String says) {
        String fault = fault(with(Bundle.shipped().texts(), id, value));
        assertTrue(fault.contains(FILE + ": " + id) && fault.contains(says), fault);
    }

    @Test
    void allFaultsAreToldAtOnce() {
        String fault = fault(with(with(Bundle.shipped().texts(), "anonymity.k", "0"), "anonymity.step.volume", "0"));
        assertTrue(fault.startsWith("knowledge: 2 faults"), fault);
    }

    private static String fault(SortedMap<String, String> texts) {
        return assertThrows(FaultyInput.class, () -> Tunica.of(Bundle.of(texts)))
                .getMessage();
    }

    /** The same texts with another value of a number that says nothing of its range. */
    private static SortedMap<String, String> with(SortedMap<String, String> texts, String id, String value) {
        String was = texts.get(FILE);
        String is = was.replaceFirst("(?s)(\\n" + Pattern.quote(id) + ":.*?value: )[0-9.]+", "$1" + value);
        assertEquals(1, is.equals(was) ? 0 : 1, id);
        SortedMap<String, String> all = new TreeMap<>(texts);
        all.put(FILE, is);
        return all;
    }
}
