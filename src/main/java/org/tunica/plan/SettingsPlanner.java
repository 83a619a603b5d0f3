package org.tunica.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.SettingRange;
import org.tunica.knowledge.Technique;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.OptionNumbers;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Verdict;

/** Gathers the settings of an option: customary ranges of the technique, overruled by what rules set. */
final class SettingsPlanner {
    private static final String PULLBACK = "pullbackSecondsPerCm";
    private static final String TIP = "tipToJunctionCm";

    private final Knowledge knowledge;

    /** Settings in words, by id. */
    private final Map<String, String> names = new HashMap<>();

    SettingsPlanner(Knowledge knowledge) {
        this.knowledge = knowledge;
        knowledge
                .glossary()
                .settings()
                .forEach((id, setting) -> names.put(id, setting.name().replaceFirst("^the ", "")));
    }

    SettingsAdvice settings(Judged judged) {
        Technique technique = judged.option().technique();
        OptionNumbers numbers = judged.option().derived().options().get(technique.id());
        Map<String, SettingAdvice> ranges = new TreeMap<>();
        technique.settings().values().forEach(range -> ranges.put(range.setting(), customary(range)));
        judged.settings().forEach(verdict -> {
            SettingAdvice set = set(verdict);
            ranges.put(set.setting(), set);
        });
        if (farFromJunction(ranges.get(TIP), judged.option().segment().topToDeepJunctionCm())) {
            ranges.remove(TIP);
        }
        pullback(ranges).ifPresent(range -> ranges.put(range.setting(), range));
        List<SettingAdvice> ordered = inGlossaryOrder(ranges);
        ComputedSetting computed = numbers.heat()
                .flatMap(HeatOutlook::proposed)
                .map(found -> ComputedSetting.of(
                        found.setting(), judged.option().segment().lengthCm(), ordered))
                .orElse(ComputedSetting.none());
        return advice(technique, numbers, ordered, computed);
    }

    /** A segment that begins further from the deep junction than the tip is to stay has no tip distance to keep. */
    private static boolean farFromJunction(SettingAdvice tip, OptionalDouble topToDeepJunctionCm) {
        return tip != null
                && topToDeepJunctionCm.isPresent()
                && tip.most().isPresent()
                && topToDeepJunctionCm.getAsDouble() > tip.most().getAsDouble();
    }

    private static SettingsAdvice advice(
            Technique technique, OptionNumbers numbers, List<SettingAdvice> ranges, ComputedSetting computed) {
        return new SettingsAdvice(
                computed.powerW(),
                computed.pullbackSecondsPerCm(),
                computed.leedJPerCm(),
                computed.totalEnergyJ(),
                computed.cycles(),
                computed.pulsesPerCm(),
                computed.againstCustom(),
                Rounded.of(numbers.tumescentMl()),
                Rounded.of(numbers.lidocaineMgPerKg()),
                numbers.drug().map(OptionNumbers.Stock::drug),
                numbers.drug().map(stock -> OptionalDouble.of(stock.percent())).orElse(OptionalDouble.empty()),
                Rounded.of(numbers.drugMl()),
                Rounded.of(numbers.sclerosantMgPerKg()),
                Rounded.of(numbers.foamMl()),
                numbers.lesions(),
                ranges,
                technique.note());
    }

    private SettingAdvice customary(SettingRange range) {
        return new SettingAdvice(
                range.setting(),
                name(range.setting()),
                OptionalDouble.empty(),
                range.low(),
                range.typical(),
                range.high(),
                range.unit(),
                range.provenance().source(),
                range.provenance().standing(),
                Optional.empty());
    }

    /** The pullback that power and linear energy, as they stand after the rules, leave room for: J/cm over W is s/cm. */
    private Optional<SettingAdvice> pullback(Map<String, SettingAdvice> ranges) {
        SettingAdvice power = ranges.get("powerW");
        SettingAdvice energy = ranges.get("leedJPerCm");
        if (power == null || energy == null || ranges.containsKey(PULLBACK)) {
            return Optional.empty();
        }
        boolean energyIsWeaker = energy.standing().compareTo(power.standing()) >= 0;
        return Optional.of(new SettingAdvice(
                PULLBACK,
                name(PULLBACK),
                OptionalDouble.empty(),
                quotient(energy.least(), power.most()),
                quotient(energy.usual(), power.usual()),
                quotient(energy.most(), power.least()),
                knowledge.glossary().settings().get(PULLBACK).unit(),
                energyIsWeaker ? energy.source() : power.source(),
                energyIsWeaker ? energy.standing() : power.standing(),
                Optional.empty()));
    }

    private static OptionalDouble quotient(OptionalDouble energyJPerCm, OptionalDouble powerW) {
        return energyJPerCm.isPresent() && powerW.isPresent()
                ? OptionalDouble.of(Rounded.of(energyJPerCm.getAsDouble() / powerW.getAsDouble()))
                : OptionalDouble.empty();
    }

    private SettingAdvice set(Verdict verdict) {
        if (verdict.rule().conclusion() instanceof Conclusion.Keep keep) {
            return ruled(
                    verdict,
                    keep.settingId(),
                    OptionalDouble.empty(),
                    OptionalDouble.of(keep.low().value()),
                    OptionalDouble.of(keep.high().value()),
                    keep.low());
        }
        Conclusion.SetTo to = (Conclusion.SetTo) verdict.rule().conclusion();
        return ruled(
                verdict,
                to.settingId(),
                OptionalDouble.of(to.value().value()),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                to.value());
    }

    private SettingAdvice ruled(
            Verdict verdict,
            String setting,
            OptionalDouble value,
            OptionalDouble low,
            OptionalDouble high,
            Quantity quantity) {
        return new SettingAdvice(
                setting,
                name(setting),
                value,
                low,
                OptionalDouble.empty(),
                high,
                quantity.unit(),
                quantity.provenance().source(),
                quantity.provenance().standing(),
                Optional.of(verdict.rule().id()));
    }

    private List<SettingAdvice> inGlossaryOrder(Map<String, SettingAdvice> ranges) {
        List<SettingAdvice> ordered = new ArrayList<>();
        for (String id : knowledge.glossary().settings().keySet()) {
            if (ranges.containsKey(id)) {
                ordered.add(ranges.get(id));
            }
        }
        return ordered;
    }

    private String name(String setting) {
        return names.get(setting);
    }
}
