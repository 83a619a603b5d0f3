package org.tunica.wording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Standing;
import org.tunica.plan.SettingAdvice;
import org.tunica.plan.SettingsAdvice;

/** Settings as a reader of a procedure list expects them: number and unit, the name where the unit does not tell. */
public final class SettingWords {
    private static final MathContext THREE_DIGITS = new MathContext(3);

    /** The unit alone says what these are. */
    private static final Set<String> NAMED_BY_UNIT = Set.of("powerW", "pullbackSecondsPerCm", "leedJPerCm");

    private SettingWords() {}

    /** Each setting as a part of a line; unverified ones are marked with an asterisk. */
    public static List<String> parts(SettingsAdvice settings, Knowledge knowledge) {
        List<String> parts = new ArrayList<>(amounts(settings, knowledge));
        parts.addAll(ranges(settings));
        return parts;
    }

    /** What is computed for the segment: drug, foam, lesions, tumescent bed, lidocaine. */
    public static List<String> amounts(SettingsAdvice settings, Knowledge knowledge) {
        List<String> parts = new ArrayList<>();
        settings.drug().ifPresent(drug -> parts.add(drug(drug, settings, knowledge)));
        number(parts, "foam to fill the lumen ", settings.foamMl(), " mL");
        number(parts, "lesions in one row ", settings.lesions(), "");
        number(parts, "tumescent bed about ", settings.tumescentMl(), " mL");
        number(parts, "lidocaine ", settings.lidocaineMgPerKg(), " mg/kg");
        return parts;
    }

    /**
     * The customary ranges. Power, pullback and linear energy are one part: a linear energy never stands apart from the
     * two it comes from.
     */
    public static List<String> ranges(SettingsAdvice settings) {
        List<String> inseparable = new ArrayList<>();
        List<String> others = new ArrayList<>();
        settings.ranges()
                .forEach(range -> (NAMED_BY_UNIT.contains(range.setting()) ? inseparable : others).add(range(range)));
        if (!inseparable.isEmpty()) {
            others.add(0, String.join("; ", inseparable));
        }
        return others;
    }

    private static String drug(String drug, SettingsAdvice settings, Knowledge knowledge) {
        List<String> parts = new ArrayList<>();
        number(parts, drug.replace('-', ' ') + " ", settings.drugPercent(), " %");
        number(parts, "", settings.drugMl(), " mL of liquid");
        number(parts, "", settings.sclerosantMgPerKg(), " mg/kg" + ofAtMost(drug, knowledge));
        return String.join(", ", parts);
    }

    /** A dose close to its limit must be seen as close; only polidocanol has a limit by weight. */
    private static String ofAtMost(String drug, Knowledge knowledge) {
        if (!drug.equals("polidocanol")) {
            return "";
        }
        Quantity most = knowledge.quantity("dose.polidocanol.day");
        String mark = most.provenance().standing() == Standing.UNVERIFIED ? "*" : "";
        return " (at most " + plain(most.value()) + UcumWords.behind(most.unit()) + mark + " a day)";
    }

    private static void number(List<String> parts, String before, OptionalDouble value, String after) {
        value.ifPresent(number -> parts.add(before + plain(number) + after));
    }

    private static String range(SettingAdvice setting) {
        String name = NAMED_BY_UNIT.contains(setting.setting()) ? "" : setting.name() + " ";
        String mark = setting.standing() == Standing.UNVERIFIED ? "*" : "";
        return name + amount(setting) + UcumWords.behind(setting.unit()) + mark;
    }

    private static String amount(SettingAdvice setting) {
        if (setting.value().isPresent()) {
            return plain(setting.value().getAsDouble());
        }
        if (setting.low().isPresent() && setting.high().isPresent()) {
            return between(
                    plain(setting.low().getAsDouble()), plain(setting.high().getAsDouble()));
        }
        if (setting.low().isPresent()) {
            return "from " + plain(setting.low().getAsDouble());
        }
        if (setting.high().isPresent()) {
            return "up to " + plain(setting.high().getAsDouble());
        }
        return "about " + plain(setting.typical().orElseThrow());
    }

    private static String between(String low, String high) {
        return low.equals(high) ? low : low + " to " + high;
    }

    /** Three significant digits, no exponent and no trailing zero: 5, not 5.0. */
    public static String plain(double value) {
        return new BigDecimal(Double.toString(value))
                .round(THREE_DIGITS)
                .stripTrailingZeros()
                .toPlainString();
    }
}
