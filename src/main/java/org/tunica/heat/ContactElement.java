package org.tunica.heat;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Segmental radiofrequency element of 7 or 3 cm held in place; ids {@code heat.segmental.*}. Not tuned. */
record ContactElement(
        double radiusMm,
        double heatedMm,
        double filmMm,
        double elementC,
        double contactWPerM2K,
        double cycleS,
        double gapS,
        double rampS,
        double charDryness)
        implements HeatDevice {

    static ContactElement from(ToDoubleFunction<String> number, int lengthCm) {
        String id = "heat.segmental.";
        return new ContactElement(
                number.applyAsDouble(id + "radius"),
                number.applyAsDouble(id + lengthCm + "cm.length"),
                number.applyAsDouble(id + "film"),
                number.applyAsDouble(id + "temperature"),
                number.applyAsDouble(id + "contact"),
                number.applyAsDouble(id + "cycle"),
                number.applyAsDouble(id + "gap"),
                number.applyAsDouble(id + "ramp"),
                number.applyAsDouble(id + "char-dryness"));
    }

    @Override
    public List<List<HeatSetting>> ladders(String id, HeatLimits limits) {
        return HeatSetting.Held.ladders(id, limits);
    }

    @Override
    public HeatSupply supply(HeatSetting setting, RadialGrid grid, SliceOptics slice) {
        HeatSetting.Held held = HeatDevice.as(HeatSetting.Held.class, setting);
        return new ContactCycles(held.cycles(), cycleS, rampS, gapS, elementC, contactWPerM2K);
    }
}
