package org.tunica.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.tunica.heat.HeatSetting;
import org.tunica.heat.ProposedSetting;
import org.tunica.physics.SegmentWindow;

/** Numbers as a reader of settings expects them. */
final class Figures {
    private Figures() {}

    /** At most two decimals, no trailing zero. */
    static String number(double value) {
        return rounded(value, 2);
    }

    /** At most one decimal, no trailing zero. */
    static String tenths(double value) {
        return rounded(value, 1);
    }

    private static String rounded(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    static String mm(double value) {
        return number(value) + " mm";
    }

    static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    /** A setting in words; the energy of a length only with its power and pull-back. */
    static String setting(HeatSetting setting) {
        if (setting instanceof HeatSetting.Pulled pulled) {
            return pulled(pulled) + " (" + Math.round(pulled.energyJPerCm()) + " J/cm)";
        }
        if (setting instanceof HeatSetting.Held held) {
            return held.cycles() + (held.cycles() == 1 ? " cycle" : " cycles");
        }
        HeatSetting.Pulsed pulsed = (HeatSetting.Pulsed) setting;
        return number(pulsed.pulsesPerCm()) + (pulsed.pulsesPerCm() == 1 ? " pulse/cm" : " pulses/cm");
    }

    /** The setting of the advice, when it is one of power and pull-back. */
    static Optional<HeatSetting.Pulled> proposedPulled(SegmentWindow window) {
        return window.proposed()
                .map(ProposedSetting::setting)
                .filter(HeatSetting.Pulled.class::isInstance)
                .map(HeatSetting.Pulled.class::cast);
    }

    static String pulled(HeatSetting.Pulled pulled) {
        return number(pulled.powerW()) + " W, " + tenths(pulled.pullbackSPerCm()) + " s/cm";
    }
}
