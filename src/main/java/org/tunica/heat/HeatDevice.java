package org.tunica.heat;

import java.util.List;
import java.util.OptionalDouble;

/** A heat device, described by its physics. Lengths in mm. */
sealed interface HeatDevice permits BipolarCatheter, LaserFibre, MicrowaveAntenna, ContactElement, SteamCatheter {
    /** Radius of the device, or of the lumen it keeps open. */
    double radiusMm();

    /** Usual fluid film around it. */
    double filmMm();

    /** Dryness of the inner wall at which charring starts. */
    double charDryness();

    /** Length that heats. */
    double heatedMm();

    /** Whether bench facts were compared; not so unless a device says it. */
    default boolean calibrated() {
        return false;
    }

    /** Whether a forward tip leans on one side. */
    default boolean leans() {
        return false;
    }

    /** Whether the calibration looked at such a setting. */
    default boolean tried(HeatSetting setting) {
        return false;
    }

    /** Thickness of char divided by that at which it is reported; 0 for devices without a char layer. */
    default double charLayerIndex(DeathTally tally) {
        return 0;
    }

    /**
     * What the device does to a slice.
     *
     * @throws IllegalArgumentException when the setting is of another kind than the device
     */
    HeatSupply supply(HeatSetting setting, RadialGrid grid, SliceOptics slice);

    /**
     * What of the slice and the run matters to light and steam.
     *
     * @param bloodFraction blood share of the film when it is not the usual one
     * @param powerFactor share of the power that falls on the side looked at
     * @param steamReruns 0 to leave the steam of a laser out
     */
    record SliceOptics(OptionalDouble bloodFraction, double powerFactor, int steamReruns) {}

    /** Every setting offered, see {@link HeatSetting.Pulled}; most devices are drawn back. */
    default List<List<HeatSetting>> ladders(String id, HeatLimits limits) {
        return HeatSetting.Pulled.ladders(id, limits);
    }

    /** Narrows a setting to the kind a device takes. */
    static <T extends HeatSetting> T as(Class<T> kind, HeatSetting setting) {
        if (!kind.isInstance(setting)) {
            throw new IllegalArgumentException(
                    setting.deviceId() + " takes a " + kind.getSimpleName() + " setting, got " + setting);
        }
        return kind.cast(setting);
    }
}
