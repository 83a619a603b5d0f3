package org.tunica.pastcases;

import java.util.List;
import org.tunica.knowledge.Knowledge;

/**
 * How well nobody may be found in a base of past cases; each is a quantity of knowledge/ with source and standing.
 *
 * @param k fewest past cases that must look alike to an outsider
 * @param kOutside the same where a base leaves the house
 */
public record AnonymityLimits(int k, int kOutside) {
    /** The ids in knowledge/, in the order of the components. */
    public static final List<String> IDS = List.of("anonymity.k", "anonymity.k.outside");

    /** The limits of a release. */
    public static AnonymityLimits of(Knowledge knowledge) {
        int[] v = IDS.stream().mapToInt(id -> (int) knowledge.value(id)).toArray();
        return new AnonymityLimits(v[0], v[1]);
    }
}
