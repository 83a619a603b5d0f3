package org.tunica.heat;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Steam given in pulses; ids {@code heat.steam.*}. Pulse timing is a guess, nothing tuned. */
record SteamCatheter(
        double radiusMm,
        double heatedMm,
        double filmMm,
        double efficiency,
        double pulseJ,
        double pulseS,
        double pauseS,
        double contactWPerM2K,
        double charDryness)
        implements HeatDevice {
    private static final double MM_PER_CM = 10;

    static SteamCatheter from(ToDoubleFunction<String> number) {
        String id = "heat.steam.";
        return new SteamCatheter(
                number.applyAsDouble(id + "radius"),
                number.applyAsDouble(id + "zone"),
                number.applyAsDouble(id + "film"),
                number.applyAsDouble(id + "efficiency"),
                number.applyAsDouble(id + "pulse-energy"),
                number.applyAsDouble(id + "pulse-time"),
                number.applyAsDouble(id + "pause"),
                number.applyAsDouble(id + "contact"),
                number.applyAsDouble(id + "char-dryness"));
    }

    @Override
    public List<List<HeatSetting>> ladders(String id, HeatLimits limits) {
        return HeatSetting.Pulsed.ladders(id, limits);
    }

    @Override
    public HeatSupply supply(HeatSetting setting, RadialGrid grid, SliceOptics slice) {
        HeatSetting.Pulsed pulsed = HeatDevice.as(HeatSetting.Pulsed.class, setting);
        int pulses = (int) Math.round(pulsed.pulsesPerCm() * heatedMm / MM_PER_CM);
        double lineWPerM = efficiency * pulseJ / (pulseS * Si.m(heatedMm));
        return new SteamPulses(pulses, pulseS, pauseS, lineWPerM, contactWPerM2K);
    }
}
