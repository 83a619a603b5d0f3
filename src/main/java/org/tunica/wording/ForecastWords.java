package org.tunica.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.Predicted;
import org.tunica.plan.SettingsAdvice;

/** What is proposed and what the models foresee of it, in a line or two. */
public final class ForecastWords {
    /** Below this nothing is felt and the number would only fill the line; no clinical limit. */
    private static final double WORTH_SAYING_C = 39;

    private ForecastWords() {}

    /** The lines for one option; none when nothing is computed for it. */
    public static List<String> lines(OptionAdvice option) {
        Predicted predicted = option.predicted();
        if (predicted.heat().isPresent()) {
            return heat(option.settings(), predicted, predicted.heat().get());
        }
        if (predicted.wallFractionKilled().isPresent()) {
            return List.of(
                    "reaches " + percent(predicted.wallFractionKilled().getAsDouble()) + " of " + wall(predicted));
        }
        return List.of(predicted.says());
    }

    private static List<String> heat(SettingsAdvice settings, Predicted predicted, Predicted.HeatForecast heat) {
        List<String> parts = new ArrayList<>();
        parts.add(death(predicted, heat));
        parts.add("chance of char " + percent(heat.charShare()));
        warm(parts, "nerve", heat);
        warm(parts, "skin", heat);
        List<String> lines = new ArrayList<>();
        lines.add(lead(heat) + proposal(settings) + ": " + String.join("; ", parts));
        settings.againstCustom().forEach(against -> lines.add("note: " + against));
        return lines;
    }

    /** Only what kills the whole wall within every limit is proposed; anything less is shown as less. */
    private static String lead(Predicted.HeatForecast heat) {
        if (!heat.withinLimits()) {
            return "no setting keeps all limits (" + heat.limit().replace('-', ' ') + "); a compromise, no proposal: ";
        }
        return heat.death().equals("not-through")
                ? "no setting within the limits kills the whole wall surely enough; the deepest found: "
                : "propose ";
    }

    /** A linear energy in brackets behind the power and the pullback it comes from. */
    public static String proposal(SettingsAdvice settings) {
        if (settings.leedJPerCm().isPresent()) {
            return number(settings.powerW()) + " W, " + number(settings.pullbackSecondsPerCm()) + " s/cm ("
                    + number(settings.leedJPerCm()) + " J/cm" + total(settings.totalEnergyJ()) + ")";
        }
        if (settings.cycles().isPresent()) {
            return counted(settings.cycles().getAsDouble(), "cycle") + " on each stretch";
        }
        return counted(settings.pulsesPerCm().orElseThrow(), "pulse") + " per cm";
    }

    private static String total(OptionalDouble totalEnergyJ) {
        return totalEnergyJ.isPresent() ? ", " + number(totalEnergyJ) + " J in all" : "";
    }

    private static String counted(double count, String what) {
        return SettingWords.plain(count) + " " + what + (count == 1 ? "" : "s");
    }

    private static String death(Predicted predicted, Predicted.HeatForecast heat) {
        return switch (heat.death()) {
            case "at-once" -> wall(predicted) + " dies at once, chance " + percent(heat.deathAtOnceShare());
            case "at-once-or-later" -> wall(predicted) + " dies at once or later, chance " + percent(heat.deathShare());
            default ->
                "death at once or later reaches "
                        + percent(predicted.wallFractionKilled().orElseThrow()) + " of " + wall(predicted)
                        + ", chance that all of it dies " + percent(heat.deathShare());
        };
    }

    private static String wall(Predicted predicted) {
        return "a wall of " + number(predicted.wallAtWorkMm()) + " mm";
    }

    /** The limits ask what nine draws of ten keep below, so that is what is told, not the run in the middle. */
    private static void warm(List<String> parts, String what, Predicted.HeatForecast heat) {
        heat.spreads().stream()
                .filter(spread -> spread.of().equals("peak at the " + what) && spread.high() >= WORTH_SAYING_C)
                .forEach(spread -> parts.add("nine draws of ten keep the " + what + " below "
                        + (int) Math.ceil(spread.high()) + " degrees Celsius"));
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? SettingWords.plain(value.getAsDouble()) : "not known";
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
