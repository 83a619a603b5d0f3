package org.tunica.fhir;

import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * What a record gives of a case, before anybody judged it.
 *
 * @param tree as a case file would hold it
 * @param unused everything of the record that did not go into it
 * @param ages when each value of it was recorded
 */
public record TakenOver(JsonNode tree, List<Unused> unused, List<DataAge> ages) {
    public TakenOver {
        unused = List.copyOf(unused);
        ages = List.copyOf(ages);
    }
}
