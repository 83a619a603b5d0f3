package org.tunica.fhir;

import java.util.List;
import org.tunica.casefile.CaseFile;

/**
 * A record read as a case.
 *
 * @param unused everything of the record that did not go into it
 * @param ages when each value of it was recorded
 */
public record Translated(CaseFile caseFile, List<Unused> unused, List<DataAge> ages) {
    public Translated {
        unused = List.copyOf(unused);
        ages = List.copyOf(ages);
    }
}
