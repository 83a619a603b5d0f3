package org.tunica.cli;

import java.util.stream.Collectors;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Source;
import org.tunica.rules.Condition;
import org.tunica.rules.Rule;
import org.tunica.wording.SettingWords;

/** A rule as text for people. */
final class RuleText {
    private static final int INDENT = 2;

    private final Knowledge knowledge;
    private final int width;

    RuleText(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.width = width;
    }

    /** The rule with its limits, sources and change record. */
    String whole(Rule rule) {
        StringBuilder out = new StringBuilder();
        out.append(line(0, rule.id() + "  " + rule.title()));
        out.append('\n').append(sentence(rule)).append('\n');
        rule.limitIds().forEach(id -> out.append(line(INDENT, limit(knowledge.quantity(id)))));
        out.append(line(
                INDENT,
                "Class " + rule.ruleClass() + "; " + rule.standing().word() + "; to be reviewed by " + rule.reviewBy()
                        + "; " + rule.place() + "."));
        rule.hazards()
                .forEach(id -> out.append(line(
                        INDENT,
                        "Controls hazard " + id + ": "
                                + knowledge.hazards().get(id).hazard() + ".")));
        rule.sources()
                .forEach(
                        id -> out.append(line(INDENT, source(knowledge.sources().get(id)))));
        out.append(line(INDENT, change(knowledge.changes().get(rule.change()))));
        return out.toString();
    }

    private String sentence(Rule rule) {
        StringBuilder out = new StringBuilder();
        String lead = "When ";
        for (Condition condition : rule.conditions()) {
            out.append(line(INDENT, lead + condition.sentence()));
            lead = "and ";
        }
        out.append(line(INDENT, "then " + rule.conclusion().sentence() + ","));
        out.append(line(INDENT, "because " + rule.because() + "."));
        return out.toString();
    }

    private static String limit(Quantity limit) {
        return "Limit " + limit.id() + " = " + SettingWords.plain(limit.value()) + UcumWords.behind(limit.unit()) + ", "
                + limit.provenance().standing().word() + " ("
                + limit.provenance().source() + "): " + limit.says() + ".";
    }

    private static String source(Source source) {
        return "Source " + source.id() + ": " + source.cites() + " (read: "
                + source.read().word() + ").";
    }

    private static String change(ChangeRecord change) {
        String approved = change.approvers().isEmpty()
                ? "approved by nobody"
                : "approved by "
                        + change.approvers().stream()
                                .map(person -> person.initials() + ", " + person.role())
                                .collect(Collectors.joining("; "));
        return "Change " + change.number() + ": " + change.title() + " ("
                + change.status().word() + ", " + approved + ").";
    }

    private String line(int indent, String text) {
        return Wrap.paragraph(width, indent, text);
    }
}
