package org.tunica.heat;

import java.util.function.ToDoubleFunction;

/** Microwave antenna at 2.45 GHz drawn back; ids {@code heat.microwave.*}. From memory, not tuned, unvalidated. */
record MicrowaveAntenna(
        double radiusMm,
        double heatedMm,
        AxialProfile profile,
        double filmMm,
        double efficiency,
        double exponent,
        double decayMm,
        double charDryness)
        implements HeatDevice {

    static MicrowaveAntenna from(ToDoubleFunction<String> number) {
        String id = "heat.microwave.";
        double heatedMm = number.applyAsDouble(id + "length");
        return new MicrowaveAntenna(
                number.applyAsDouble(id + "radius"),
                heatedMm,
                new AxialProfile(Si.m(heatedMm), Si.m(number.applyAsDouble(id + "spread"))),
                number.applyAsDouble(id + "film"),
                number.applyAsDouble(id + "efficiency"),
                number.applyAsDouble(id + "exponent"),
                number.applyAsDouble(id + "decay"),
                number.applyAsDouble(id + "char-dryness"));
    }

    @Override
    public HeatSupply supply(HeatSetting setting, RadialGrid grid, SliceOptics slice) {
        HeatSetting.Pulled pulled = HeatDevice.as(HeatSetting.Pulled.class, setting);
        return new Pullback(
                profile,
                Si.mPerS(pulled.pullbackSPerCm()),
                efficiency * pulled.powerW() * slice.powerFactor(),
                new FieldDeposition(grid, exponent, Si.m(decayMm)));
    }
}
