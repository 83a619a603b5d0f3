package org.tunica.physics;

import java.util.Optional;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Segment;

/** Where the outlook of a heat device comes from: {@link HeatPlanner#outlook} or what was found before. */
interface Outlooks {
    /** The outlook, or nothing when something it rests on is not known. */
    Optional<HeatOutlook> outlook(
            String device,
            CaseFile caseFile,
            Segment segment,
            Optional<WallGeometry> wall,
            Optional<Boolean> bloodless);
}
