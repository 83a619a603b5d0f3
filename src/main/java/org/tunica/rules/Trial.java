package org.tunica.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Quantity;

/** Tries every rule on one option, condition by condition, for a reader who asks why. The verdicts come from the engine. */
final class Trial {
    private final OptionFacts facts;
    private final Map<String, Truth> earlier = new HashMap<>();
    private final Map<String, Truth> said = new HashMap<>();

    Trial(OptionFacts facts, List<Verdict> verdicts) {
        this.facts = facts;
        for (Verdict verdict : verdicts) {
            Truth truth = verdict.speaks() ? Truth.TRUE : Truth.UNKNOWN;
            said.put(verdict.rule().id(), truth);
            String fact = EarlierVerdict.factOf(verdict.rule());
            earlier.merge(fact, truth, Truth::or);
        }
    }

    List<Tried> of(List<Rule> rules) {
        return rules.stream().map(this::tried).toList();
    }

    private Tried tried(Rule rule) {
        List<Tried.Tested> tested = new ArrayList<>();
        for (Condition condition : rule.conditions()) {
            tested.add(
                    condition instanceof Condition.OnVerdicts verdicts
                            ? onVerdicts(verdicts)
                            : onOption((Condition.OnOption) condition));
        }
        return new Tried(rule, said.getOrDefault(rule.id(), Truth.FALSE), tested);
    }

    private Tried.Tested onVerdicts(Condition.OnVerdicts condition) {
        Truth there = earlier.getOrDefault(condition.fact(), Truth.FALSE);
        return new Tried.Tested(condition, condition.wanted() ? there : there.not(), "", OptionalDouble.empty());
    }

    private Tried.Tested onOption(Condition.OnOption condition) {
        if (condition instanceof Condition.Elsewhere) {
            String met = facts.elsewhere().stream()
                    .map(other -> says(condition, other))
                    .distinct()
                    .collect(Collectors.joining("; ", "elsewhere: ", ""));
            return new Tried.Tested(condition, condition.truth(facts), met, OptionalDouble.empty());
        }
        return new Tried.Tested(condition, condition.truth(facts), says(condition, facts), away(condition));
    }

    private static String says(Condition.OnOption condition, AnswerBook book) {
        Answer answer = book.answer(condition.field());
        String unit = answer instanceof Answer.Number
                ? condition.field().unit().map(UcumWords::behind).orElse("")
                : "";
        return answer.says() + unit;
    }

    private OptionalDouble away(Condition.OnOption condition) {
        if (!(facts.answer(condition.field()) instanceof Answer.Number number)) {
            return OptionalDouble.empty();
        }
        return condition.limits().stream()
                .mapToDouble(Quantity::value)
                .map(limit -> number.value() == limit ? 0 : Math.abs((number.value() - limit) / limit))
                .min();
    }
}
