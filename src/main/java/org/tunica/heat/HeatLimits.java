package org.tunica.heat;

import java.util.function.ToDoubleFunction;

/**
 * What a proposed heat setting must keep; every number by its id in knowledge/limits/heat-settings.yaml.
 *
 * @param leastEnergyJPerCm smallest linear energy accepted
 * @param mostEnergyJPerCm largest linear energy accepted
 * @param mostCycles most heating cycles on one length of vein
 * @param mostPulsesPerCm most steam pulses for one centimetre
 * @param wishedKillProbability that the whole wall dies
 * @param mostCharProbability that charring starts
 * @param mostPerforationIndex no longer accepted from here on
 */
public record HeatLimits(
        Steps powerW,
        Steps pullbackSPerCm,
        double leastEnergyJPerCm,
        double mostEnergyJPerCm,
        int mostCycles,
        int mostPulsesPerCm,
        double wishedKillProbability,
        double mostCharProbability,
        double mostPerforationIndex,
        Warmth nerve,
        Warmth skin) {

    /** Values offered from the smallest to the largest. */
    public record Steps(double min, double max, double step) {
        public Steps {
            Checks.positive("step", step);
            Checks.within("min", min, 0, max);
        }

        int count() {
            return (int) Math.floor((max - min) / step + 1e-9) + 1;
        }

        double at(int i) {
            return min + i * step;
        }
    }

    /** Red lines for a nerve or the skin, from which warmth is no longer accepted; the amber ones belong to the rules. */
    public record Warmth(double redPeakC, double redCem43Min) {
        /** Whether a reading keeps below the red lines. */
        public boolean accepts(WarmedPoint point) {
            return point.peakC() < redPeakC && point.cem43Min() < redCem43Min;
        }
    }

    /**
     * Reads every limit.
     *
     * @param number the value of an id, in the unit knowledge/ states; it throws for an id it does not know
     */
    public static HeatLimits from(ToDoubleFunction<String> number) {
        String id = "heat.setting.";
        return new HeatLimits(
                steps(number, id + "power"),
                steps(number, id + "pullback"),
                number.applyAsDouble(id + "energy.min"),
                number.applyAsDouble(id + "energy.max"),
                (int) number.applyAsDouble(id + "cycles.max"),
                (int) number.applyAsDouble(id + "pulses.max"),
                number.applyAsDouble(id + "kill-probability"),
                number.applyAsDouble(id + "char-probability"),
                number.applyAsDouble(id + "perforation-index"),
                warmth(number, "heat.nerve"),
                warmth(number, "heat.skin"));
    }

    private static Steps steps(ToDoubleFunction<String> number, String id) {
        return new Steps(
                number.applyAsDouble(id + ".min"),
                number.applyAsDouble(id + ".max"),
                number.applyAsDouble(id + ".step"));
    }

    private static Warmth warmth(ToDoubleFunction<String> number, String id) {
        return new Warmth(number.applyAsDouble(id + ".peak.red"), number.applyAsDouble(id + ".dose.red"));
    }
}
