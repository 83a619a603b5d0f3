package org.tunica.pastcases;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;

/** New names for the segments of a case: L1, L2 ... and R1, R2 ..., in the order of its map. */
final class References {
    private final Map<String, String> fresh = new HashMap<>();
    private final Faults faults;

    References(CaseFile caseFile, Faults faults) {
        this.faults = faults;
        for (Limb limb : caseFile.limbs()) {
            String letter = limb.side() == Limb.Side.LEFT ? "L" : "R";
            int number = 0;
            for (Segment segment : limb.segments()) {
                number++;
                fresh.put(segment.ref(), letter + number);
            }
        }
    }

    /** The new name; one that is not in the case is a fault, told without the name. */
    String of(String place, String ref) {
        return Optional.ofNullable(fresh.get(ref)).orElseGet(() -> {
            faults.add(place, "names a segment that is not in the case");
            return "";
        });
    }
}
