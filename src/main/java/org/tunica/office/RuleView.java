package org.tunica.office;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import org.tunica.casefile.UcumWords;
import org.tunica.frame.Frame;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.review.Probe;
import org.tunica.review.RuleReview;
import org.tunica.rules.Rule;

/** Puts together what is known of one rule. */
record RuleView(RuleReview review, SortedMap<String, String> features, List<Probe.Outcome> probed) {
    RulePage of(Frame frame, Rule rule, RuleRow row) {
        Knowledge knowledge = review.knowledge();
        List<RulePage.Shown> scenarios = scenarios(rule.id());
        return new RulePage(
                frame,
                row,
                rule.text().lines().toList(),
                rule.because(),
                rule.limitIds().stream()
                        .map(id -> number(knowledge.quantity(id)))
                        .toList(),
                rule.sources().stream()
                        .map(knowledge::source)
                        .map(source -> new RulePage.SourceLine(
                                source.id(), source.cites(), source.read().word()))
                        .toList(),
                rule.hazards().stream()
                        .map(id -> id + ": " + knowledge.hazards().get(id).hazard())
                        .toList(),
                history(rule, knowledge),
                scenarios,
                scenarios.isEmpty() ? noScenarios() : "",
                probed.stream()
                        .filter(outcome -> outcome.probe().rule().equals(rule.id()))
                        .map(RuleView::probe)
                        .toList(),
                review.unprobed().stream()
                        .filter(one -> one.rule().equals(rule.id()))
                        .map(one -> one.what() + ": " + one.why())
                        .toList());
    }

    private String noScenarios() {
        return features.isEmpty()
                ? "No scenarios are kept with these rules; a release that was built with them shows them here."
                : "No scenario shows this rule.";
    }

    static RulePage.Number number(Quantity number) {
        return new RulePage.Number(
                number.id(),
                amount(number),
                number.says(),
                number.provenance().source(),
                number.provenance().standing().word(),
                number.provenance().since() + ", change " + number.provenance().change(),
                number.provenance().note().orElse(""));
    }

    static String amount(Quantity number) {
        String range = number.low().isPresent() && number.high().isPresent()
                ? " (" + plain(number.low().getAsDouble()) + " to "
                        + plain(number.high().getAsDouble()) + ")"
                : "";
        return plain(number.value()) + UcumWords.behind(number.unit()) + range;
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static List<RulePage.Record> history(Rule rule, Knowledge knowledge) {
        return knowledge.changes().values().stream()
                .filter(change -> change.rules().contains(rule.id())
                        || change.number().equals(rule.change())
                        || rule.limitIds().stream().anyMatch(change::lists))
                .map(change -> new RulePage.Record(
                        change.number(),
                        change.title(),
                        change.status().word().replace('-', ' '),
                        change.effective().toString(),
                        change.reason()))
                .toList();
    }

    private static RulePage.ProbeLine probe(Probe.Outcome outcome) {
        return new RulePage.ProbeLine(
                outcome.probe().what(),
                outcome.probe().expected().words(),
                outcome.said().words(),
                outcome.asExpected());
    }

    /** From the line of tags that names the rule to the next tags or the next rule. */
    private List<RulePage.Shown> scenarios(String id) {
        List<RulePage.Shown> shown = new ArrayList<>();
        features.forEach((path, text) -> {
            StringBuilder found = new StringBuilder();
            boolean inside = false;
            for (String line : text.split("\n", -1)) {
                String words = line.strip();
                if (words.startsWith("@")) {
                    inside = List.of(words.split("\\s+")).contains("@" + id);
                } else if (words.startsWith("Rule:")) {
                    inside = false;
                }
                if (inside) {
                    found.append(line).append('\n');
                }
            }
            if (!found.isEmpty()) {
                shown.add(
                        new RulePage.Shown(path, found.toString().stripIndent().strip()));
            }
        });
        return shown;
    }
}
