package org.tunica.replay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.plan.OptionJudgement;
import org.tunica.plan.RuleVoice;
import org.tunica.plan.SegmentJudgement;
import org.tunica.rules.Rule;

/** Tells which rules say something else of a segment in another release, and which of their numbers moved. */
final class Turns {
    private final Knowledge before;
    private final Knowledge after;
    private final Map<String, Rule> rulesBefore;
    private final Map<String, Rule> rulesAfter;

    /** Numbers a rule names in either release whose value is another, by rule. */
    private final Map<String, List<MovedLimit>> moved = new HashMap<>();

    /** Rules that conclude something else, or set another value. */
    private final Set<String> concludeOther;

    Turns(Knowledge before, List<Rule> rulesBefore, Knowledge after, List<Rule> rulesAfter) {
        this.before = before;
        this.after = after;
        this.rulesBefore = byId(rulesBefore);
        this.rulesAfter = byId(rulesAfter);
        Set<String> all = new TreeSet<>(this.rulesBefore.keySet());
        all.addAll(this.rulesAfter.keySet());
        all.forEach(id -> moved.put(id, moved(id)));
        this.concludeOther = this.rulesBefore.keySet().stream()
                .filter(this.rulesAfter::containsKey)
                .filter(id -> !conclusion(this.rulesBefore.get(id)).equals(conclusion(this.rulesAfter.get(id)))
                        || !values(this.rulesBefore.get(id)).equals(values(this.rulesAfter.get(id))))
                .collect(Collectors.toSet());
    }

    private static Map<String, Rule> byId(List<Rule> rules) {
        return rules.stream().collect(Collectors.toMap(Rule::id, Function.identity()));
    }

    /** The rules that turned, in the order of their ids. */
    List<Turn> between(SegmentJudgement was, SegmentJudgement is) {
        Map<String, Map<Turn.Act, Set<String>>> acts = new TreeMap<>();
        Set<String> techniques = new TreeSet<>();
        was.options().forEach(option -> techniques.add(option.technique()));
        is.options().forEach(option -> techniques.add(option.technique()));
        for (String technique : techniques) {
            if (same(was.option(technique), is.option(technique))) {
                continue;
            }
            Map<String, RuleVoice> then = voices(was.option(technique));
            Map<String, RuleVoice> now = voices(is.option(technique));
            Set<String> rules = new TreeSet<>(then.keySet());
            rules.addAll(now.keySet());
            rules.forEach(rule -> act(rule, Optional.ofNullable(then.get(rule)), Optional.ofNullable(now.get(rule)))
                    .ifPresent(act -> acts.computeIfAbsent(rule, id -> new TreeMap<>())
                            .computeIfAbsent(act, same -> new TreeSet<>())
                            .add(technique)));
        }
        List<Turn> turns = new ArrayList<>();
        acts.forEach((rule, byAct) -> byAct.forEach(
                (act, on) -> turns.add(new Turn(rule, rule(rule).title(), act, List.copyOf(on), moved.get(rule)))));
        return turns;
    }

    /** Whether the rules say the same; two lists of voices in the same order are quickly compared. */
    private boolean same(Optional<OptionJudgement> was, Optional<OptionJudgement> is) {
        return was.map(OptionJudgement::voices).equals(is.map(OptionJudgement::voices))
                && was.stream()
                        .flatMap(option -> option.voices().stream())
                        .noneMatch(voice -> concludeOther.contains(voice.rule()));
    }

    private static Map<String, RuleVoice> voices(Optional<OptionJudgement> option) {
        return option.map(OptionJudgement::voices).orElse(List.of()).stream()
                .collect(Collectors.toMap(RuleVoice::rule, Function.identity()));
    }

    private Optional<Turn.Act> act(String rule, Optional<RuleVoice> then, Optional<RuleVoice> now) {
        if (then.isEmpty() || now.isEmpty()) {
            return Optional.of(then.isEmpty() ? Turn.Act.SPEAKS_NOW : Turn.Act.IS_SILENT_NOW);
        }
        boolean certainThen = then.get().inDoubt().isEmpty();
        boolean certainNow = now.get().inDoubt().isEmpty();
        if (certainThen != certainNow) {
            return Optional.of(certainNow ? Turn.Act.IS_CERTAIN_NOW : Turn.Act.IS_IN_DOUBT_NOW);
        }
        if (meansOther(rule, then.get(), now.get())) {
            return Optional.of(Turn.Act.MEANS_OTHER_NOW);
        }
        boolean setsOther = !values(rulesBefore.get(rule)).equals(values(rulesAfter.get(rule)));
        return setsOther ? Optional.of(Turn.Act.SETS_OTHER_NOW) : Optional.empty();
    }

    private boolean meansOther(String rule, RuleVoice then, RuleVoice now) {
        return then.stands() != now.stands()
                || !then.strength().equals(now.strength())
                || !conclusion(rulesBefore.get(rule)).equals(conclusion(rulesAfter.get(rule)));
    }

    private static String conclusion(Rule rule) {
        return rule.conclusion().sentence();
    }

    /** Of the numbers it concludes with; only a rule that sets has any. */
    private static List<Double> values(Rule rule) {
        return rule.conclusion().limits().stream().map(Quantity::value).toList();
    }

    private Rule rule(String id) {
        return Optional.ofNullable(rulesAfter.get(id)).orElseGet(() -> rulesBefore.get(id));
    }

    private List<MovedLimit> moved(String rule) {
        Set<String> named = new TreeSet<>();
        Optional.ofNullable(rulesBefore.get(rule)).ifPresent(known -> named.addAll(known.limitIds()));
        Optional.ofNullable(rulesAfter.get(rule)).ifPresent(known -> named.addAll(known.limitIds()));
        return named.stream()
                .map(this::limit)
                .filter(limit -> !limit.beforeValue().equals(limit.afterValue()))
                .toList();
    }

    private MovedLimit limit(String id) {
        Optional<Quantity> was = Optional.ofNullable(before.quantities().get(id));
        Optional<Quantity> is = Optional.ofNullable(after.quantities().get(id));
        return new MovedLimit(
                id, value(was), value(is), is.or(() -> was).map(Quantity::unit).orElse("1"));
    }

    private static OptionalDouble value(Optional<Quantity> quantity) {
        return quantity.map(known -> OptionalDouble.of(known.value())).orElse(OptionalDouble.empty());
    }
}
