package org.tunica.pastcases;

import java.nio.charset.StandardCharsets;
import org.tunica.Tunica;

/** Past cases of people who never were. */
final class PastCases {
    private PastCases() {}

    static PastCase invented() {
        return Tunica.shipped()
                .pastCases()
                .readPastCase("past case", PastCaseReaderTest.INVENTED.getBytes(StandardCharsets.UTF_8));
    }
}
