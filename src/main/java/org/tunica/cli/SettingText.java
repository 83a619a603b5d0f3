package org.tunica.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.tunica.knowledge.Standing;
import org.tunica.plan.SettingAdvice;
import org.tunica.plan.SettingsAdvice;

/** Settings as a reader of a procedure list expects them: name, number, unit; what is unverified says so. */
final class SettingText {
    private SettingText() {}

    /** All settings in one line. */
    static String line(SettingsAdvice settings) {
        List<String> parts = new ArrayList<>();
        settings.ranges().forEach(range -> parts.add(range(range)));
        number(parts, "tumescent bed about ", settings.tumescentMl(), " mL");
        number(parts, "lidocaine ", settings.lidocaineMgPerKg(), " mg/kg");
        settings.drug()
                .ifPresent(drug ->
                        number(parts, drug.replace('-', ' ') + " ", settings.drugPercent(), " %" + volume(settings)));
        number(parts, "foam to fill the lumen ", settings.foamMl(), " mL");
        number(parts, "lesions in one row ", settings.lesions(), "");
        return String.join("; ", parts);
    }

    private static String volume(SettingsAdvice settings) {
        return settings.drugMl().isPresent() ? ", " + plain(settings.drugMl().getAsDouble()) + " mL liquid" : "";
    }

    private static void number(List<String> parts, String before, OptionalDouble value, String after) {
        value.ifPresent(number -> parts.add(before + plain(number) + after));
    }

    static String range(SettingAdvice setting) {
        String mark = setting.standing() == Standing.UNVERIFIED ? " (unverified)" : "";
        return setting.name() + " " + amount(setting) + unit(setting.unit()) + mark;
    }

    private static String amount(SettingAdvice setting) {
        if (setting.value().isPresent()) {
            return plain(setting.value().getAsDouble());
        }
        if (setting.low().isPresent() && setting.high().isPresent()) {
            return plain(setting.low().getAsDouble()) + " to "
                    + plain(setting.high().getAsDouble());
        }
        if (setting.low().isPresent()) {
            return "from " + plain(setting.low().getAsDouble());
        }
        if (setting.high().isPresent()) {
            return "up to " + plain(setting.high().getAsDouble());
        }
        return "about " + plain(setting.typical().orElseThrow());
    }

    /** UCUM as people write it. */
    static String unit(String ucum) {
        return switch (ucum) {
            case "1" -> "";
            case "Cel" -> " degrees Celsius";
            case "/cm" -> " per cm";
            default -> " " + ucum;
        };
    }

    /** No exponent and no trailing zero: 5, not 5.0. */
    static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    /** Names in one line. */
    static String names(List<String> names) {
        return names.stream().collect(Collectors.joining(", "));
    }
}
