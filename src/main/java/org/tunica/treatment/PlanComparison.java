package org.tunica.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.SettingAdvice;
import org.tunica.plan.SettingsAdvice;
import org.tunica.session.SessionPlan;

/** What was done otherwise than planned, in words. */
final class PlanComparison {
    private final Knowledge knowledge;
    private final SegmentFacts facts;
    private final List<ProcedureNote.HeatedStretch> stretches;
    private final List<String> differences = new ArrayList<>();

    PlanComparison(Knowledge knowledge, SegmentFacts facts, List<ProcedureNote.HeatedStretch> stretches) {
        this.knowledge = knowledge;
        this.facts = facts;
        this.stretches = stretches;
    }

    /** One sentence a difference; none when nothing recorded differs from the plan. */
    List<String> differences() {
        if (facts.planned().isEmpty()) {
            return List.of("This segment was not planned for this session.");
        }
        SessionPlan.Step step = facts.planned().get();
        DeliveredSegment delivered = facts.delivered();
        if (delivered.notDone().isPresent()) {
            return List.of("Not done, planned was " + step.says() + ".");
        }
        String technique = delivered.technique().orElseThrow();
        if (technique.equals(step.technique())) {
            settings(step.settings());
        } else {
            differences.add(knowledge.technique(technique).says() + " instead of " + step.says() + ".");
        }
        delivered
                .position()
                .filter(position -> position != step.position())
                .ifPresent(position ->
                        differences.add(Says.word(position) + " instead of " + Says.word(step.position()) + "."));
        length();
        return List.copyOf(differences);
    }

    private void length() {
        OptionalDouble treated = facts.delivered().treatedLengthCm();
        OptionalDouble mapped = facts.mapped().lengthCm();
        if (treated.isPresent() && mapped.isPresent() && differ(treated.getAsDouble(), mapped.getAsDouble())) {
            differences.add(Rounded.text(treated.getAsDouble()) + " cm treated of the "
                    + Rounded.text(mapped.getAsDouble()) + " cm mapped.");
        }
    }

    private void settings(SettingsAdvice planned) {
        for (ProcedureNote.HeatedStretch stretch : stretches) {
            heat(stretch, planned);
        }
        DeliveredSegment delivered = facts.delivered();
        range("tip", delivered.tipToJunctionCm(), "tipToJunctionCm", planned).ifPresent(this::add);
        delivered
                .tumescent()
                .flatMap(given -> number("tumescence", given.volumeMl(), planned.tumescentMl(), "mL"))
                .ifPresent(this::add);
        delivered.sclerosant().ifPresent(given -> sclerosant(given, planned));
        if (delivered.lesions().isPresent()) {
            number("lesions", OptionalDouble.of(delivered.lesions().getAsInt()), planned.lesions(), "in the rows given")
                    .ifPresent(this::add);
        }
    }

    private void sclerosant(DeliveredSegment.Sclerosant given, SettingsAdvice planned) {
        given.drug()
                .filter(drug -> planned.drug().isPresent()
                        && !drug.word().equals(planned.drug().get()))
                .ifPresent(drug -> add(Says.word(drug) + " instead of "
                        + planned.drug().orElseThrow().replace('-', ' ')));
        number("strength", given.percent(), planned.drugPercent(), "%").ifPresent(this::add);
        number("liquid", GivenDoses.liquidMl(given), planned.drugMl(), "mL").ifPresent(this::add);
        number("foam", given.foamMl(), planned.foamMl(), "mL").ifPresent(this::add);
    }

    private void heat(ProcedureNote.HeatedStretch stretch, SettingsAdvice planned) {
        HeatBalance balance = stretch.balance();
        List<String> parts = new ArrayList<>();
        part(parts, balance.value(HeatBalance.Number.POWER), planned.powerW(), "powerW", planned, "W");
        part(
                parts,
                balance.value(HeatBalance.Number.PULLBACK),
                planned.pullbackSecondsPerCm(),
                "pullbackSecondsPerCm",
                planned,
                "s/cm");
        part(
                parts,
                balance.value(HeatBalance.Number.LINEAR_ENERGY),
                planned.leedJPerCm(),
                "leedJPerCm",
                planned,
                "J/cm");
        OptionalDouble cycles = stretch.heat().cycles().isPresent()
                ? OptionalDouble.of(stretch.heat().cycles().getAsInt())
                : OptionalDouble.empty();
        part(parts, cycles, planned.cycles(), "cyclesPerStretch", planned, "cycles");
        part(parts, stretch.heat().pulsesPerCm(), planned.pulsesPerCm(), "pulsesPerCm", planned, "pulses per cm");
        if (!parts.isEmpty()) {
            String where = !stretch.alone() ? "Stretch " + stretch.number() + ": " : "";
            differences.add(where + String.join(", ", parts) + ".");
        }
    }

    /** Against the number proposed, or, where none was, against the range. */
    private static void part(
            List<String> parts,
            OptionalDouble given,
            OptionalDouble proposed,
            String setting,
            SettingsAdvice planned,
            String unit) {
        if (given.isPresent() && proposed.isPresent()) {
            if (differ(given.getAsDouble(), proposed.getAsDouble())) {
                parts.add(Rounded.text(given.getAsDouble()) + " " + unit + " instead of "
                        + Rounded.text(proposed.getAsDouble()) + " " + unit);
            }
        } else if (given.isPresent()) {
            range("", given, setting, planned).ifPresent(parts::add);
        }
    }

    private static Optional<String> number(String name, OptionalDouble given, OptionalDouble planned, String unit) {
        return given.isPresent() && planned.isPresent() && differ(given.getAsDouble(), planned.getAsDouble())
                ? Optional.of(name + " " + Rounded.text(given.getAsDouble()) + " " + unit + " instead of "
                        + Rounded.text(planned.getAsDouble()) + " " + unit)
                : Optional.empty();
    }

    private static Optional<String> range(String name, OptionalDouble given, String setting, SettingsAdvice planned) {
        if (given.isEmpty()) {
            return Optional.empty();
        }
        return planned.ranges().stream()
                .filter(range -> range.setting().equals(setting))
                .flatMap(range -> outside(given.getAsDouble(), range).stream())
                .map(says -> name.isEmpty() ? says : name + " at " + says)
                .findFirst();
    }

    private static Optional<String> outside(double given, SettingAdvice range) {
        double low = range.low().orElse(range.value().orElse(Double.NEGATIVE_INFINITY));
        double high = range.high().orElse(range.value().orElse(Double.POSITIVE_INFINITY));
        if (given >= low && given <= high) {
            return Optional.empty();
        }
        boolean below = given < low;
        String unit = UcumWords.behind(range.unit());
        return Optional.of(Rounded.text(given) + unit + (below ? ", below the " : ", above the ")
                + Rounded.text(below ? low : high) + unit + " of the plan");
    }

    /** Numbers that read the same are the same. */
    private static boolean differ(double given, double planned) {
        return !Rounded.text(given).equals(Rounded.text(planned));
    }

    private void add(String says) {
        differences.add(Character.toUpperCase(says.charAt(0)) + says.substring(1) + ".");
    }
}
