package org.tunica.invented;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.SettingRange;
import org.tunica.knowledge.Technique;
import org.tunica.treatment.DeliveredHeat;

/** Makes up the settings of a heat device within what is customary; the linear energy always follows from power and pullback. */
final class HeatMaker {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final Distribution longest;
    private final Distribution microwave;
    private final double longElementCm;
    private final double shortElementCm;
    private final double largeMm;
    private final double fastestSecondsPerCm;
    private final double slowestSecondsPerCm;

    HeatMaker(Knowledge knowledge) {
        this.longest = knowledge.invented("invented.laser-1940");
        this.microwave = knowledge.invented("invented.microwave");
        this.longElementCm = knowledge.value("element.long.length");
        this.shortElementCm = knowledge.value("element.short.length");
        this.largeMm = knowledge.value("trunk.large.over");
        this.fastestSecondsPerCm = knowledge.value("heat.setting.pullback.min");
        this.slowestSecondsPerCm = knowledge.value("heat.setting.pullback.max");
    }

    /** The setting over the whole length; nothing for an element that is set stretch by stretch. */
    DeliveredHeat whole(Draw draw, Technique technique, double lengthCm, double lumenMm) {
        if (technique.id().equals("steam")) {
            SettingRange pulses = technique.settings().get("pulsesPerCm");
            return steam(lumenMm > largeMm ? high(pulses) : low(pulses));
        }
        if (technique.id().equals("microwave")) {
            double powerW = Made.rounded(between(draw, technique, "powerW"), 0);
            return drawnBack(powerW, draw.between(microwave.number("low"), microwave.number("high")), lengthCm);
        }
        boolean named = technique.settings().containsKey("leedJPerCm");
        double powerW = Made.rounded(
                named
                        ? between(draw, technique, "powerW")
                        : draw.between(longest.number("power-low"), longest.number("power-high")),
                0);
        double energyJPerCm = named
                ? between(draw, technique, "leedJPerCm")
                : draw.between(longest.number("energy-low"), longest.number("energy-high"));
        return drawnBack(powerW, energyJPerCm / powerW, lengthCm);
    }

    private DeliveredHeat drawnBack(double powerW, double secondsPerCm, double lengthCm) {
        double wished = Made.rounded(secondsPerCm, 1);
        double pullback = Math.min(slowestSecondsPerCm, Math.max(fastestSecondsPerCm, wished));
        return new DeliveredHeat(
                NONE,
                OptionalDouble.of(powerW),
                OptionalDouble.of(pullback),
                NONE,
                OptionalDouble.of(Made.rounded(powerW * pullback, 1)),
                OptionalDouble.of(Made.rounded(powerW * pullback * lengthCm, 0)),
                OptionalDouble.of(Made.rounded(pullback * lengthCm, 1)),
                OptionalInt.empty(),
                NONE,
                NONE);
    }

    private static DeliveredHeat steam(double pulsesPerCm) {
        return new DeliveredHeat(
                NONE, NONE, NONE, NONE, NONE, NONE, NONE, OptionalInt.empty(), OptionalDouble.of(pulsesPerCm), NONE);
    }

    /** Stretch by stretch, more cycles next to the junction and in a large vein; none for other devices. */
    List<DeliveredHeat> stretches(Draw draw, Technique technique, double lengthCm, double lumenMm) {
        SettingRange cycles = technique.settings().get("cyclesPerStretch");
        if (cycles == null) {
            return List.of();
        }
        double elementCm = technique.id().equals("rf-segmental-7cm") ? longElementCm : shortElementCm;
        int plain = (int) (lumenMm > largeMm ? high(cycles) : low(cycles));
        int first = (int) Made.rounded(between(draw, technique, "cyclesFirstStretch"), 0);
        double temperatureC = high(technique.settings().get("elementTemperatureC"));
        List<DeliveredHeat> stretches = new ArrayList<>();
        stretches.add(contact(elementCm, Math.max(first, plain), temperatureC));
        double restCm = Made.rounded(lengthCm - elementCm, 1);
        if (restCm > 0) {
            stretches.add(contact(restCm, plain, temperatureC));
        }
        return stretches;
    }

    private static DeliveredHeat contact(double lengthCm, int cycles, double temperatureC) {
        return new DeliveredHeat(
                OptionalDouble.of(lengthCm),
                NONE,
                NONE,
                NONE,
                NONE,
                NONE,
                NONE,
                OptionalInt.of(cycles),
                NONE,
                OptionalDouble.of(temperatureC));
    }

    /** A setting within its customary range. */
    static double between(Draw draw, Technique technique, String setting) {
        SettingRange range = technique.settings().get(setting);
        return draw.between(low(range), high(range));
    }

    static double low(SettingRange range) {
        return range.low().orElseThrow();
    }

    static double high(SettingRange range) {
        return range.high().orElseThrow();
    }
}
