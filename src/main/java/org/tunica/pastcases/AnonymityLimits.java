package org.tunica.pastcases;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.Faults;
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
    private static final String WHOLE = "must be a whole number from 0";
    private static final List<String> BANDED = List.of("age", "weight");

    private static final List<String> OWN =
            List.of("anonymity.k", "anonymity.k.outside", "anonymity.outcome.from", "anonymity.coarser");

    /** Every id in knowledge/ that keeping people from being found rests on. */
    public static final List<String> IDS = ids();

    /** The limits of a release. */
    public static AnonymityLimits of(Knowledge knowledge) {
        int[] v = OWN.stream().mapToInt(id -> (int) knowledge.value(id)).toArray();
        return new AnonymityLimits(v[0], v[1], v[2], v[3]);
    }

    /**
     * Makes sure that nothing is rounded to nothing, and that a crowd is more than one.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault by file and key
     */
    public static void check(Knowledge knowledge) {
        Faults faults = new Faults();
        for (String id : Step.IDS) {
            refuse(!(knowledge.value(id) > 0), id, "must be more than 0", faults);
        }
        for (String id : List.of("anonymity.k", "anonymity.k.outside", "anonymity.coarser")) {
            refuse(!isWhole(knowledge.value(id), 2), id, "must be a whole number from 2", faults);
        }
        refuse(!isWhole(knowledge.value("anonymity.outcome.from"), 0), "anonymity.outcome.from", WHOLE, faults);
        for (String banded : BANDED) {
            String band = "anonymity." + banded;
            refuse(
                    !isWhole(knowledge.value(band + ".band"), 1),
                    band + ".band",
                    "must be a whole number from 1",
                    faults);
            refuse(!isWhole(knowledge.value(band + ".under"), 0), band + ".under", WHOLE, faults);
            refuse(
                    knowledge.value(band + ".over") <= knowledge.value(band + ".under"),
                    band + ".over",
                    "must be more than " + band + ".under",
                    faults);
        }
        faults.throwIfAny("knowledge");
    }

    private static boolean isWhole(double value, int least) {
        return value >= least && value == Math.rint(value);
    }

    private static void refuse(boolean wrong, String id, String says, Faults faults) {
        if (wrong) {
            faults.add("knowledge/anonymity.yaml: " + id + ".value", says);
        }
    }

    private static List<String> ids() {
        List<String> ids = new ArrayList<>(OWN);
        ids.addAll(Step.IDS);
        for (String banded : BANDED) {
            for (String part : List.of("band", "under", "over")) {
                ids.add("anonymity." + banded + "." + part);
            }
        }
        return List.copyOf(ids);
    }
}
