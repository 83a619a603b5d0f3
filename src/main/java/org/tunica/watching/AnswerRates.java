package org.tunica.watching;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Rule;
import org.tunica.statistics.WilsonInterval;

/** How often cards were set aside, by rule and by technique. */
final class AnswerRates {
    private static final String CONFIDENCE = "outcomes.confidence";
    private static final String NO_REASON = "no reason given";

    private final Knowledge knowledge;
    private final List<Rule> rules;
    private final List<Answered> answered;

    AnswerRates(Knowledge knowledge, List<Rule> rules, List<Answered> answered) {
        this.knowledge = knowledge;
        this.rules = rules;
        this.answered = answered;
    }

    /** Of every rule that stood behind an answered card. */
    List<AnswerRate> ofRules() {
        Map<String, List<Answered>> byRule = new TreeMap<>();
        answered.forEach(card -> card.rules()
                .forEach(rule ->
                        byRule.computeIfAbsent(rule, id -> new ArrayList<>()).add(card)));
        return rates(byRule, this::title);
    }

    List<AnswerRate> ofTechniques() {
        Map<String, List<Answered>> byTechnique = new TreeMap<>();
        answered.forEach(card -> card.technique()
                .ifPresent(id -> byTechnique
                        .computeIfAbsent(id, one -> new ArrayList<>())
                        .add(card)));
        return rates(byTechnique, this::technique);
    }

    int unknown() {
        return (int) answered.stream()
                .filter(card -> card.rules().isEmpty() && card.technique().isEmpty())
                .count();
    }

    private String title(String id) {
        return rules.stream()
                .filter(rule -> rule.id().equals(id))
                .map(Rule::title)
                .findFirst()
                .orElse("no rule of the release in force");
    }

    private String technique(String id) {
        return knowledge.techniques().containsKey(id) ? knowledge.technique(id).says() : id;
    }

    private List<AnswerRate> rates(Map<String, List<Answered>> byId, UnaryOperator<String> says) {
        return byId.entrySet().stream()
                .map(entry -> rate(entry.getKey(), says.apply(entry.getKey()), entry.getValue()))
                .sorted(Comparator.comparing(
                                (AnswerRate rate) -> -rate.overridden().share())
                        .thenComparing(rate -> -rate.overridden().total())
                        .thenComparing(AnswerRate::id))
                .toList();
    }

    private AnswerRate rate(String id, String says, List<Answered> cards) {
        List<Answered> aside = cards.stream()
                .filter(card -> card.answer() == Answered.Answer.OVERRIDDEN)
                .toList();
        return new AnswerRate(
                id,
                says,
                WilsonInterval.of(aside.size(), cards.size(), knowledge.value(CONFIDENCE)),
                reasons(aside),
                count(aside, Answered.Found.APPROPRIATE),
                count(aside, Answered.Found.APPROPRIATE) + count(aside, Answered.Found.NOT_APPROPRIATE));
    }

    private static int count(List<Answered> cards, Answered.Found found) {
        return (int) cards.stream()
                .filter(card -> card.found().equals(Optional.of(found)))
                .count();
    }

    private static List<AnswerRate.ReasonCount> reasons(List<Answered> aside) {
        Map<String, Integer> counts = new TreeMap<>();
        aside.forEach(card -> counts.merge(card.reason().orElse(NO_REASON), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(entry -> new AnswerRate.ReasonCount(entry.getKey(), entry.getValue()))
                .sorted(Comparator.comparing(AnswerRate.ReasonCount::count)
                        .reversed()
                        .thenComparing(AnswerRate.ReasonCount::reason))
                .toList();
    }
}
