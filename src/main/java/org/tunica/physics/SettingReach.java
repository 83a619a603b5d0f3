package org.tunica.physics;

import java.math.BigDecimal;
import org.tunica.heat.HeatLimits;
import org.tunica.heat.Validity;

/** What can be set on a device that is drawn back, so that the heat model answers. */
public record SettingReach(Axis powerW, Axis pullbackSPerCm) {
    /**
     * One number that is set, in the unit of the setting it belongs to.
     *
     * @param min smallest the model answers for
     * @param max largest
     * @param step in which it is moved: half of that in which settings are offered
     * @param first smallest that is offered
     */
    public record Axis(double min, double max, double step, double first) {
        static Axis of(Validity.Range range, HeatLimits.Steps offered) {
            return new Axis(range.min(), range.max(), offered.step() / 2, offered.min());
        }

        /** A value moved by so many steps, kept where the model answers. */
        public double moved(double value, int steps) {
            return Math.max(min, Math.min(max, value + steps * step));
        }

        /** From where to where, in words. */
        public String range() {
            return plain(min) + " to " + plain(max) + ", in steps of " + plain(step);
        }

        private static String plain(double value) {
            return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        }

        /** Whether the model answers for a value. */
        public boolean holds(double value) {
            return value >= min && value <= max;
        }
    }
}
