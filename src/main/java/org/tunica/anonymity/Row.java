package org.tunica.anonymity;

import java.util.List;

/**
 * Records of a table that are the same in all that is told here.
 *
 * @param known what an outsider could know, one value for each ladder, in their order
 * @param learned what an outsider would learn of somebody found
 * @param count how many records
 */
public record Row(List<String> known, String learned, int count) {
    public Row {
        known = List.copyOf(known);
    }

    /** One record. */
    public Row(List<String> known, String learned) {
        this(known, learned, 1);
    }
}
