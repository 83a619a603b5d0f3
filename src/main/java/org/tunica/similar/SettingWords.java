package org.tunica.similar;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.treatment.DeliveredHeat;
import org.tunica.treatment.DeliveredSegment;

/** Settings that were used, in words. A linear energy never stands without its power and pullback. */
final class SettingWords {
    private static final MathContext THREE_DIGITS = new MathContext(3);
    private static final String MISSING = "settings not recorded";

    private SettingWords() {}

    static String of(DeliveredSegment delivered) {
        List<String> parts = new ArrayList<>();
        heat(delivered).ifPresent(parts::add);
        delivered.sclerosant().map(SettingWords::sclerosant).ifPresent(parts::add);
        delivered.adhesive().map(SettingWords::adhesive).ifPresent(parts::add);
        delivered.lesions().ifPresent(lesions -> parts.add(lesions + " lesions"));
        List<String> told = parts.stream().filter(part -> !part.isEmpty()).toList();
        return told.isEmpty() ? MISSING : String.join(", ", told);
    }

    private static Optional<String> heat(DeliveredSegment delivered) {
        Optional<String> main = Way.mainSetting(delivered).map(SettingWords::heat);
        int stretches = delivered.stretches().map(List::size).orElse(1);
        if (stretches == 1) {
            return main;
        }
        return Optional.of(stretches + " stretches, the longest: " + main.orElse("not told"));
    }

    private static String heat(DeliveredHeat heat) {
        List<String> parts = new ArrayList<>();
        OptionalDouble pullback = Way.pullback(heat);
        number(parts, heat.powerW(), " W");
        number(parts, pullback, " s/cm");
        if (heat.powerW().isPresent() && pullback.isPresent()) {
            double leedJPerCm = heat.leedJPerCm().orElse(heat.powerW().getAsDouble() * pullback.getAsDouble());
            parts.set(1, parts.get(1) + " (" + plain(leedJPerCm) + " J/cm)");
        }
        number(parts, heat.elementTemperatureC(), " degrees Celsius");
        heat.cycles().ifPresent(cycles -> parts.add(cycles + (cycles == 1 ? " cycle" : " cycles")));
        number(parts, heat.pulsesPerCm(), " pulses per cm");
        return String.join(", ", parts);
    }

    private static String sclerosant(DeliveredSegment.Sclerosant given) {
        List<String> parts = new ArrayList<>();
        number(parts, given.percent(), " %");
        number(parts, given.foamMl(), " mL of foam");
        if (given.foamMl().isEmpty()) {
            number(parts, given.liquidMl(), " mL of liquid");
        }
        return String.join(", ", parts);
    }

    private static String adhesive(DeliveredSegment.Adhesive given) {
        List<String> parts = new ArrayList<>();
        number(parts, given.volumeMl(), " mL of adhesive");
        given.aliquots().ifPresent(aliquots -> parts.add(aliquots + " aliquots"));
        return String.join(", ", parts);
    }

    private static void number(List<String> parts, OptionalDouble number, String unit) {
        number.ifPresent(known -> parts.add(plain(known) + unit));
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value)
                .round(THREE_DIGITS)
                .stripTrailingZeros()
                .toPlainString();
    }
}
