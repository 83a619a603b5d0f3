package org.tunica.pastcases;

import java.util.ArrayList;
import java.util.List;
import org.tunica.knowledge.Knowledge;

/**
 * How well nobody may be found in a base of past cases; each is a quantity of knowledge/ with source and standing.
 *
 * @param k fewest past cases that must look alike to an outsider
 * @param kOutside the same where a base leaves the house
 * @param outcomeFromDays a case is finished with a scan on this day after the procedure or later
 * @param coarser so many bands become one where bands are made coarser
 */
public record AnonymityLimits(int k, int kOutside, int outcomeFromDays, int coarser) {
    private static final List<String> OWN =
            List.of("anonymity.k", "anonymity.k.outside", "anonymity.outcome.from", "anonymity.coarser");

    /** Every id in knowledge/ that keeping people from being found rests on. */
    public static final List<String> IDS = ids();

    /** The limits of a release. */
    public static AnonymityLimits of(Knowledge knowledge) {
        int[] v = OWN.stream().mapToInt(id -> (int) knowledge.value(id)).toArray();
        return new AnonymityLimits(v[0], v[1], v[2], v[3]);
    }

    private static List<String> ids() {
        List<String> ids = new ArrayList<>(OWN);
        ids.addAll(Step.IDS);
        for (String banded : List.of("age", "weight")) {
            for (String part : List.of("band", "under", "over")) {
                ids.add("anonymity." + banded + "." + part);
            }
        }
        return List.copyOf(ids);
    }
}
