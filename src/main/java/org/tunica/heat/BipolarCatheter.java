package org.tunica.heat;

import java.util.function.ToDoubleFunction;

/** Bipolar radiofrequency catheter drawn back; ids {@code heat.rf-bipolar.*}, mostly calibrated. */
record BipolarCatheter(
        double radiusMm,
        double heatedMm,
        AxialProfile profile,
        double filmMm,
        double efficiency,
        double depositionMm,
        double edgeMm,
        double edgeShare,
        double rollOffMm,
        double charDryness,
        TriedSettings triedSettings)
        implements HeatDevice {

    static BipolarCatheter from(ToDoubleFunction<String> number) {
        String id = "heat.rf-bipolar.";
        double heatedMm = number.applyAsDouble(id + "length");
        return new BipolarCatheter(
                number.applyAsDouble(id + "radius"),
                heatedMm,
                new AxialProfile(Si.m(heatedMm), Si.m(number.applyAsDouble(id + "spread"))),
                number.applyAsDouble(id + "film"),
                number.applyAsDouble(id + "efficiency"),
                number.applyAsDouble(id + "deposition-depth"),
                number.applyAsDouble(id + "edge-depth"),
                number.applyAsDouble(id + "edge-share"),
                number.applyAsDouble(id + "roll-off"),
                number.applyAsDouble(id + "char-dryness"),
                TriedSettings.from(number, "heat.rf-bipolar"));
    }

    @Override
    public boolean calibrated() {
        return true;
    }

    @Override
    public boolean tried(HeatSetting setting) {
        return triedSettings.holds(HeatDevice.as(HeatSetting.Pulled.class, setting));
    }

    @Override
    public HeatSupply supply(HeatSetting setting, RadialGrid grid, SliceOptics slice) {
        HeatSetting.Pulled pulled = HeatDevice.as(HeatSetting.Pulled.class, setting);
        return new Pullback(
                profile,
                Si.mPerS(pulled.pullbackSPerCm()),
                efficiency * pulled.powerW() * slice.powerFactor(),
                new ElectrodeDeposition(grid, Si.m(depositionMm), Si.m(edgeMm), edgeShare, Si.m(rollOffMm)));
    }
}
