package org.tunica.physics;

import java.util.Optional;
import org.tunica.heat.ProposedSetting;

/**
 * What the heat model proposes and foresees for a device in a segment, or why it says nothing.
 *
 * @param radiusMm the radius of device and film, on which the wall wraps
 * @param wallOnDeviceMm the wall wrapped on the device and its film
 * @param proposed empty when the model gives no answer
 * @param silence why not; empty when there is an answer
 */
public record HeatOutlook(double radiusMm, double wallOnDeviceMm, Optional<ProposedSetting> proposed, String silence) {
    static HeatOutlook of(double radiusMm, double wallOnDeviceMm, ProposedSetting proposed) {
        return new HeatOutlook(radiusMm, wallOnDeviceMm, Optional.of(proposed), "");
    }

    static HeatOutlook silent(double radiusMm, double wallOnDeviceMm, String why) {
        return new HeatOutlook(radiusMm, wallOnDeviceMm, Optional.empty(), why);
    }

    /** The same setting in a wall of another thickness: the depths that die stay, in walls they are another share. */
    HeatOutlook through(double measuredMm, double nowMm) {
        return new HeatOutlook(
                radiusMm,
                wallOnDeviceMm * nowMm / measuredMm,
                proposed.map(setting -> setting.with(setting.spread().perWallTimes(measuredMm / nowMm))),
                silence);
    }
}
