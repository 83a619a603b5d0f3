package org.tunica.review;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tunica.knowledge.GlossaryField;
import org.tunica.rules.Answer;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;

/**
 * Which stretches of a number the rules of one question speak of, technique by technique: the stretches, what lies
 * between them and is left out, and where two rules can speak at once. One question is one setting, or one kind of
 * conclusion within one file. Ends are exact: a point at which neither rule speaks is a gap.
 */
final class RangeChecks {
    private final Reasoning reasoning;
    private final Variable technique;

    RangeChecks(Reasoning reasoning) {
        this.reasoning = reasoning;
        this.technique = reasoning.space().variable(FactSpace.TECHNIQUE);
    }

    List<Remark> remarks() {
        Map<String, List<Rule>> questions = new TreeMap<>();
        reasoning
                .rules()
                .forEach(rule -> questions
                        .computeIfAbsent(question(rule), key -> new ArrayList<>())
                        .add(rule));
        List<Remark> remarks = new ArrayList<>();
        questions.forEach((question, rules) -> fieldsOf(rules).forEach(field -> of(question, rules, field, remarks)));
        return remarks;
    }

    private static String question(Rule rule) {
        Conclusion conclusion = rule.conclusion();
        if (conclusion instanceof Conclusion.SetTo set) {
            return "setting " + set.settingName();
        }
        if (conclusion instanceof Conclusion.Keep keep) {
            return "setting " + keep.settingName();
        }
        String file = rule.place().replaceFirst(".*/([^/]+)\\.rule:\\d+$", "$1");
        return conclusion.kind().sentence() + " (" + file + ")";
    }

    /** Numbers that at least two of the rules compare. */
    private Set<GlossaryField> fieldsOf(List<Rule> rules) {
        Map<GlossaryField, Long> counts = rules.stream()
                .flatMap(rule -> reasoning.space().fields().stream().filter(field -> compares(rule, field)))
                .collect(Collectors.groupingBy(field -> field, LinkedHashMap::new, Collectors.counting()));
        counts.values().removeIf(count -> count < 2);
        return counts.keySet();
    }

    /** Whether a rule compares a number, by itself or through a finding it asks for. */
    private boolean compares(Rule rule, GlossaryField field) {
        return rule.conditions().stream().anyMatch(condition -> compares(condition, field));
    }

    private boolean compares(Condition condition, GlossaryField field) {
        if (condition instanceof Condition.Found found) {
            return reasoning.rules().stream()
                    .filter(rule -> Demands.says(rule.conclusion(), found))
                    .anyMatch(rule -> compares(rule, field));
        }
        return (condition instanceof Condition.Compared || condition instanceof Condition.Between)
                && ((Condition.OnOption) condition).field().equals(field);
    }

    private void of(String question, List<Rule> rules, GlossaryField field, List<Remark> remarks) {
        Map<Picture, List<String>> pictures = new LinkedHashMap<>();
        for (int cell = 0; cell < technique.cells().size(); cell++) {
            Demand.Fits only = Reasoning.at(technique, cell);
            String name = ((Answer.OneWord) technique.cells().get(cell).said(FactSpace.TECHNIQUE)).word();
            picture(rules, field, only)
                    .ifPresent(picture -> pictures.computeIfAbsent(picture, key -> new ArrayList<>())
                            .add(name));
        }
        pictures.forEach((picture, names) -> picture.remark(question, field, names, remarks));
    }

    private Optional<Picture> picture(List<Rule> rules, GlossaryField field, Demand.Fits only) {
        Variable number = reasoning.space().variable(field.id());
        List<Rule> comparing = rules.stream()
                .filter(rule -> compares(rule, field))
                .filter(rule -> Reasoning.possible(only, reasoning.demands().of(rule, Wish.TRUE)))
                .toList();
        if (comparing.size() < 2) {
            return Optional.empty();
        }
        Map<Rule, BitSet> covered = new LinkedHashMap<>();
        comparing.forEach(rule -> covered.put(rule, cells(number, only, rule)));
        BitSet all = new BitSet();
        covered.values().forEach(all::or);
        BitSet gap = new BitSet();
        gap.set(all.nextSetBit(0), all.length());
        gap.andNot(all);
        rules.stream().filter(rule -> !comparing.contains(rule)).forEach(rule -> gap.andNot(cells(number, only, rule)));
        return Optional.of(new Picture(number, covered, gap, overlaps(number, comparing, only)));
    }

    private BitSet cells(Variable number, Demand.Fits only, Rule... rules) {
        List<Demand> wanted = new ArrayList<>(List.of(only));
        for (Rule rule : rules) {
            wanted.add(reasoning.demands().of(rule, Wish.TRUE));
        }
        BitSet cells = reasoning.cells(number, wanted.toArray(Demand[]::new));
        cells.and(number.where(one -> !one.unknown()));
        return cells;
    }

    private Map<List<Rule>, BitSet> overlaps(Variable number, List<Rule> rules, Demand.Fits only) {
        Map<List<Rule>, BitSet> overlaps = new LinkedHashMap<>();
        for (int i = 0; i < rules.size(); i++) {
            for (int j = i + 1; j < rules.size(); j++) {
                BitSet both = cells(number, only, rules.get(i), rules.get(j));
                if (!both.isEmpty()) {
                    overlaps.put(List.of(rules.get(i), rules.get(j)), both);
                }
            }
        }
        return overlaps;
    }

    /** What the rules of a question make of one number for one technique. */
    private record Picture(Variable number, Map<Rule, BitSet> covered, BitSet gap, Map<List<Rule>, BitSet> overlaps) {

        void remark(String question, GlossaryField field, List<String> techniques, List<Remark> remarks) {
            String about = question + ", by " + field.name() + ", for " + String.join(", ", techniques) + ": "
                    + covered.entrySet().stream()
                            .map(entry -> entry.getKey().id() + " " + words(entry.getValue(), field))
                            .collect(Collectors.joining("; "));
            if (!gap.isEmpty()) {
                add(Remark.Kind.GAP, about + ". No rule: " + words(gap, field), remarks);
            }
            if (!overlaps.isEmpty()) {
                add(Remark.Kind.OVERLAP, about + ". At once: " + together(field), remarks);
            }
            if (gap.isEmpty() && overlaps.isEmpty()) {
                add(Remark.Kind.RANGES, about + ". Neither gap nor overlap", remarks);
            }
        }

        private String together(GlossaryField field) {
            return overlaps.entrySet().stream()
                    .map(entry -> entry.getKey().stream().map(Rule::id).collect(Collectors.joining(" and ")) + " "
                            + words(entry.getValue(), field))
                    .collect(Collectors.joining("; "));
        }

        private void add(Remark.Kind kind, String sentence, List<Remark> remarks) {
            remarks.add(new Remark(
                    kind,
                    covered.keySet().stream().map(Rule::id).toList(),
                    covered.keySet().stream().map(Rule::place).toList(),
                    sentence));
        }

        private String words(BitSet cells, GlossaryField field) {
            List<String> words = new ArrayList<>();
            for (int from = cells.nextSetBit(0); from >= 0; from = cells.nextSetBit(cells.nextClearBit(from))) {
                int to = cells.nextClearBit(from) - 1;
                Span span = number.cells().get(from).span().orElseThrow();
                Span last = number.cells().get(to).span().orElseThrow();
                words.add(span.upTo(last).words(field.unit().orElse("1")));
            }
            return words.isEmpty() ? "never" : String.join(" and ", words);
        }
    }
}
