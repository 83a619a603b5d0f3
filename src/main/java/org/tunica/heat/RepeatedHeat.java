package org.tunica.heat;

import java.util.List;

/** What a held element or steam does to one slice after one, two, ... cycles or pulses: the only choice they leave. */
public final class RepeatedHeat {
    private RepeatedHeat() {}

    /**
     * Whether a device leaves no other choice than how often it heats.
     *
     * @throws IllegalArgumentException for an unknown device
     */
    public static boolean fits(HeatModel model, HeatLimits limits, String deviceId) {
        return !(settings(model, limits, deviceId).get(0) instanceof HeatSetting.Pulled);
    }

    /**
     * One run for each number of cycles or pulses accepted, from one up.
     *
     * @throws IllegalArgumentException for a device that is drawn back, or an input the model refuses
     */
    public static List<HeatRun> of(HeatModel model, HeatLimits limits, String deviceId, VeinSlice slice) {
        if (!fits(model, limits, deviceId)) {
            throw new IllegalArgumentException("deviceId must be a held element or steam, got " + deviceId);
        }
        return settings(model, limits, deviceId).stream()
                .map(setting -> model.run(setting, slice))
                .toList();
    }

    private static List<HeatSetting> settings(HeatModel model, HeatLimits limits, String deviceId) {
        return model.constants().device(deviceId).ladders(deviceId, limits).get(0);
    }
}
