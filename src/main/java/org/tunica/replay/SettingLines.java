package org.tunica.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.tunica.plan.SettingAdvice;
import org.tunica.plan.SettingsAdvice;

/**
 * The settings of an option as lines by name, so that two of them can be compared. Where a number comes from is no part of
 * them. Power, pullback and linear energy are one line: a linear energy never stands apart from the two it comes from.
 */
final class SettingLines {
    private static final Set<String> INSEPARABLE = Set.of("powerW", "pullbackSecondsPerCm", "leedJPerCm");

    private final Map<String, String> lines = new LinkedHashMap<>();

    private SettingLines(SettingsAdvice settings) {
        proposed(settings);
        lines.put("computed setting against custom", String.join("; ", settings.againstCustom()));
        number("tumescent bed", settings.tumescentMl(), "mL");
        number("lidocaine", settings.lidocaineMgPerKg(), "mg/kg");
        lines.put("drug", drug(settings));
        number("liquid drug", settings.drugMl(), "mL");
        number("drug by body weight", settings.sclerosantMgPerKg(), "mg/kg");
        number("foam", settings.foamMl(), "mL");
        number("lesions in one row", settings.lesions(), "1");
        ranges(settings.ranges());
    }

    /** What is not the same in two settings of an option, in a fixed order. */
    static List<ChangedSetting> changed(SettingsAdvice before, SettingsAdvice after) {
        if (before.equals(after)) {
            return List.of();
        }
        Map<String, String> was = new SettingLines(before).lines;
        Map<String, String> is = new SettingLines(after).lines;
        Set<String> names = new LinkedHashSet<>(was.keySet());
        names.addAll(is.keySet());
        return names.stream()
                .map(name -> new ChangedSetting(name, said(was, name), said(is, name)))
                .filter(setting -> !setting.before().equals(setting.after()))
                .toList();
    }

    private static Optional<String> said(Map<String, String> lines, String name) {
        return Optional.ofNullable(lines.get(name)).filter(line -> !line.isEmpty());
    }

    private void proposed(SettingsAdvice settings) {
        List<String> parts = new ArrayList<>();
        add(parts, settings.powerW(), "W");
        add(parts, settings.pullbackSecondsPerCm(), "s/cm");
        add(parts, settings.leedJPerCm(), "J/cm");
        add(parts, settings.totalEnergyJ(), "J");
        settings.cycles().ifPresent(cycles -> parts.add(Amounts.plain(cycles) + " cycles"));
        settings.pulsesPerCm().ifPresent(pulses -> parts.add(Amounts.plain(pulses) + " pulses per cm"));
        lines.put("computed setting", String.join(", ", parts));
    }

    private static String drug(SettingsAdvice settings) {
        List<String> parts = new ArrayList<>(settings.drug().stream().toList());
        add(parts, settings.drugPercent(), "%");
        return String.join(" ", parts);
    }

    private void ranges(List<SettingAdvice> ranges) {
        String three = ranges.stream()
                .filter(range -> INSEPARABLE.contains(range.setting()))
                .map(Amounts::of)
                .collect(Collectors.joining("; "));
        lines.put("power, pullback and linear energy", three);
        ranges.stream()
                .filter(range -> !INSEPARABLE.contains(range.setting()))
                .forEach(range -> lines.put(range.name(), Amounts.of(range)));
    }

    private void number(String name, OptionalDouble value, String unit) {
        lines.put(name, value.isPresent() ? Amounts.of(value.getAsDouble(), unit) : "");
    }

    private static void add(List<String> parts, OptionalDouble value, String unit) {
        value.ifPresent(number -> parts.add(Amounts.of(number, unit)));
    }
}
