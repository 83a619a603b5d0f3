package org.tunica.firmness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.tunica.casefile.PlausibleRange;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.GlossaryField;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.Planner;
import org.tunica.plan.Rated;
import org.tunica.rules.Answer;
import org.tunica.rules.Considered;
import org.tunica.rules.OptionFacts;
import org.tunica.rules.RuleBook;

/**
 * What a missing measurement or answer is worth: every answer it could have is put to the rules, each counted alike, for
 * nobody knows how likely it is. Geometry, volumes and doses follow a number; a heat setting is looked for only once the
 * number is recorded, so until then techniques by heat go on waiting.
 */
final class Missing {
    /** Fields that are computed, or say what the option is, or what people have decided. */
    private static final List<String> NOT_ASKED = List.of("derived.", "option.", "ranking.", "segment.chosenFamily");

    /** Where no rule names a limit of a number, it is tried at so many places of what is plausible. */
    private static final int PLACES = 5;

    private final Knowledge knowledge;
    private final RuleBook rules;
    private final Planner planner;

    Missing(Knowledge knowledge, RuleBook rules, Planner planner) {
        this.knowledge = knowledge;
        this.rules = rules;
        this.planner = planner;
    }

    /** What techniques wait for or what could change who leads, the most promising first. */
    List<FirmnessAdvice.Missing> of(Situation measured, Trials.Trial now, Trials trials) {
        List<Considered> options =
                planner.considered(measured.caseFile(), measured.limb(), measured.segment(), now.derived());
        List<OptionFacts> facts = options.stream().map(rules::facts).toList();
        List<FirmnessAdvice.Missing> found = new ArrayList<>();
        for (GlossaryField field : knowledge.glossary().fields().values()) {
            if (NOT_ASKED.stream().noneMatch(field.id()::startsWith)
                    && facts.stream().anyMatch(of -> of.answer(field) instanceof Answer.Unknown)) {
                FirmnessAdvice.Missing missing =
                        missing(field, now.rated(), then(field, measured, options, facts, trials));
                if (missing.changesFirstShare().orElse(1) > 0
                        || !missing.waiting().isEmpty()) {
                    found.add(missing);
                }
            }
        }
        return found.stream()
                .sorted(Comparator.comparing(Missing::promise)
                        .thenComparing(missing -> missing.waiting().size())
                        .reversed()
                        .thenComparing(FirmnessAdvice.Missing::noun))
                .toList();
    }

    /** How everything would stand with each answer. */
    private List<List<Rated>> then(
            GlossaryField field, Situation measured, List<Considered> options, List<OptionFacts> facts, Trials trials) {
        Optional<MeasuredNumber> number = MeasuredNumber.behind(field.id());
        if (number.isPresent()) {
            return values(field, number.get()).stream()
                    .map(value -> trials.of(number.get().with(measured, value)).rated())
                    .toList();
        }
        return rules.possibleAnswers(field).stream()
                .map(answer -> planner.rate(options, answered(field, answer, facts)))
                .toList();
    }

    private static List<OptionFacts> answered(GlossaryField field, Answer answer, List<OptionFacts> facts) {
        return facts.stream()
                .map(of -> of.answer(field) instanceof Answer.Unknown ? of.with(field, answer) : of)
                .toList();
    }

    /** One value in each band between limits, or evenly over what is plausible. */
    private List<Double> values(GlossaryField field, MeasuredNumber number) {
        PlausibleRange range = knowledge.measurements().get(number.path()).range();
        List<Double> inBands = rules.possibleAnswers(field).stream()
                .map(answer -> ((Answer.Number) answer).value())
                .filter(value -> value >= range.min() && value <= range.max())
                .toList();
        return inBands.isEmpty()
                ? IntStream.range(0, PLACES)
                        .mapToObj(place -> range.min() + (place + 0.5) / PLACES * (range.max() - range.min()))
                        .toList()
                : inBands;
    }

    /** What nobody can tell may change everything. */
    private static double promise(FirmnessAdvice.Missing missing) {
        return missing.changesFirstShare().orElse(1);
    }

    private FirmnessAdvice.Missing missing(GlossaryField field, List<Rated> now, List<List<Rated>> then) {
        Optional<String> leads = Rated.first(now);
        TreeSet<String> couldLead = new TreeSet<>();
        int changes = 0;
        for (List<Rated> answered : then) {
            Optional<String> first = Rated.first(answered);
            changes += first.equals(leads) ? 0 : 1;
            first.ifPresent(couldLead::add);
        }
        List<String> waiting = now.stream()
                .filter(rated -> rated.missing().contains(field.noun()))
                .map(Rated::technique)
                .toList();
        boolean told = !then.isEmpty() && waiting.stream().noneMatch(technique -> untold(field, technique));
        return new FirmnessAdvice.Missing(
                field.noun(),
                waiting,
                told ? OptionalDouble.of(Shares.rounded((double) changes / then.size())) : OptionalDouble.empty(),
                List.copyOf(couldLead));
    }

    /** Heat is not looked into for a measurement that is only supposed. */
    private boolean untold(GlossaryField field, String technique) {
        return knowledge.technique(technique).family() == Family.HEAT
                && MeasuredNumber.behind(field.id())
                        .filter(MeasuredNumber::setsHeat)
                        .isPresent();
    }
}
