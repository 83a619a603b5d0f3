package org.tunica.physics;

import java.util.Optional;
import org.tunica.heat.ProposedSetting;

/**
 * What the heat model proposes and foresees for a device in a segment, or why it says nothing.
 *
 * @param wallOnDeviceMm the wall wrapped on the device and its film
 * @param proposed empty when the model gives no answer
 * @param silence why not; empty when there is an answer
 */
public record HeatOutlook(double wallOnDeviceMm, Optional<ProposedSetting> proposed, String silence) {
    static HeatOutlook of(double wallOnDeviceMm, ProposedSetting proposed) {
        return new HeatOutlook(wallOnDeviceMm, Optional.of(proposed), "");
    }

    static HeatOutlook silent(double wallOnDeviceMm, String why) {
        return new HeatOutlook(wallOnDeviceMm, Optional.empty(), why);
    }
}
