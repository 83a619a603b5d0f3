package org.tunica.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tunica.heat.HeatSetting;

/**
 * The setting the heat model proposes. A linear energy never stands without its power and pullback: the three are there
 * together or not at all.
 *
 * @param totalEnergyJ over the length of the segment, when that is recorded
 * @param cycles on each stretch of a contact element
 * @param pulsesPerCm of steam
 * @param againstCustom where it lies outside the customary range, in words
 */
record ComputedSetting(
        OptionalDouble powerW,
        OptionalDouble pullbackSecondsPerCm,
        OptionalDouble leedJPerCm,
        OptionalDouble totalEnergyJ,
        OptionalDouble cycles,
        OptionalDouble pulsesPerCm,
        List<String> againstCustom) {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    static ComputedSetting none() {
        return new ComputedSetting(NONE, NONE, NONE, NONE, NONE, NONE, List.of());
    }

    static ComputedSetting of(HeatSetting setting, OptionalDouble lengthCm, List<SettingAdvice> customary) {
        if (setting instanceof HeatSetting.Pulled pulled) {
            return pulled(pulled, lengthCm, customary);
        }
        if (setting instanceof HeatSetting.Held held) {
            return held(held.cycles(), customary);
        }
        double pulses = ((HeatSetting.Pulsed) setting).pulsesPerCm();
        return new ComputedSetting(
                NONE, NONE, NONE, NONE, NONE, OptionalDouble.of(pulses), against(customary, "pulsesPerCm", pulses));
    }

    /** The model counts the cycles of any one stretch, so the first stretch, where custom asks for more, is told too. */
    private static ComputedSetting held(double cycles, List<SettingAdvice> customary) {
        List<String> against = new ArrayList<>();
        against.addAll(against(customary, "cyclesFirstStretch", cycles));
        against.addAll(against(customary, "cyclesPerStretch", cycles));
        return new ComputedSetting(NONE, NONE, NONE, NONE, OptionalDouble.of(cycles), NONE, against);
    }

    private static ComputedSetting pulled(
            HeatSetting.Pulled pulled, OptionalDouble lengthCm, List<SettingAdvice> customary) {
        double leed = Rounded.of(pulled.energyJPerCm());
        List<String> against = new ArrayList<>();
        against.addAll(against(customary, "powerW", pulled.powerW()));
        against.addAll(against(customary, "pullbackSecondsPerCm", pulled.pullbackSPerCm()));
        against.addAll(against(customary, "leedJPerCm", leed));
        return new ComputedSetting(
                OptionalDouble.of(pulled.powerW()),
                OptionalDouble.of(pulled.pullbackSPerCm()),
                OptionalDouble.of(leed),
                lengthCm.isPresent() ? OptionalDouble.of(Rounded.of(leed * lengthCm.getAsDouble())) : NONE,
                NONE,
                NONE,
                against);
    }

    private static List<String> against(List<SettingAdvice> customary, String setting, double computed) {
        return customary.stream()
                .filter(range -> range.setting().equals(setting))
                .filter(range -> computed < lowest(range) || computed > highest(range))
                .map(range -> range.name() + (computed < lowest(range) ? " below" : " above") + " the customary range")
                .toList();
    }

    private static double lowest(SettingAdvice range) {
        return range.low().orElse(range.value().orElse(Double.NEGATIVE_INFINITY));
    }

    private static double highest(SettingAdvice range) {
        return range.high().orElse(range.value().orElse(Double.POSITIVE_INFINITY));
    }
}
