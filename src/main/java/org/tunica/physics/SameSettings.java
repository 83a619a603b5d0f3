package org.tunica.physics;

import java.util.Optional;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Segment;

/** Heat settings that were chosen for a wall as measured, met by a wall that is a little thicker or thinner. */
final class SameSettings {
    private final Derived chosen;

    SameSettings(Derived chosen) {
        this.chosen = chosen;
    }

    /** See {@link Outlooks}. */
    Optional<HeatOutlook> outlook(
            String device,
            CaseFile caseFile,
            Segment segment,
            Optional<WallGeometry> wall,
            Optional<Boolean> bloodless) {
        Optional<HeatOutlook> before = chosen.options().get(device).heat();
        Optional<WallGeometry> measured = chosen.segment().wall();
        if (before.isEmpty() || measured.isEmpty() || wall.isEmpty()) {
            return Optional.empty();
        }
        double radiusMm = before.get().radiusMm();
        double measuredMm = measured.get().wallOnRadiusMm(radiusMm);
        double nowMm = wall.get().wallOnRadiusMm(radiusMm);
        return before.map(outlook -> measuredMm == nowMm ? outlook : outlook.through(measuredMm, nowMm));
    }
}
