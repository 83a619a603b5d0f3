package org.tunica.heat;

import java.util.function.ToDoubleFunction;

/** The powers and pull-backs the calibration of a device looked at. */
record TriedSettings(Validity.Range powerW, Validity.Range pullbackSPerCm) {
    static TriedSettings from(ToDoubleFunction<String> number, String id) {
        return new TriedSettings(
                Validity.range(number, id + ".tried-power"), Validity.range(number, id + ".tried-pullback"));
    }

    boolean holds(HeatSetting.Pulled pulled) {
        return powerW.holds(pulled.powerW()) && pullbackSPerCm.holds(pulled.pullbackSPerCm());
    }
}
