package org.tunica.physics;

import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Segment;

/** What the heat model has found before. What it would have to compute is noted. Safe for several threads. */
final class FoundSoFar {
    private final HeatPlanner heat;
    private final Set<String> awaited = ConcurrentHashMap.newKeySet();

    FoundSoFar(HeatPlanner heat) {
        this.heat = heat;
    }

    /** See {@link Outlooks}. */
    Optional<HeatOutlook> outlook(
            String device,
            CaseFile caseFile,
            Segment segment,
            Optional<WallGeometry> wall,
            Optional<Boolean> bloodless) {
        Optional<HeatQuestion> question = heat.question(device, caseFile, segment, wall, bloodless);
        Optional<HeatOutlook> found = question.flatMap(heat::found);
        if (question.isPresent() && found.isEmpty()) {
            awaited.add(device);
        }
        return found;
    }

    /** Ids of the techniques for which something would have to be computed. */
    Set<String> awaited() {
        return awaited;
    }
}
