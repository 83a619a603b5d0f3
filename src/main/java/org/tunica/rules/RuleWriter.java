package org.tunica.rules;

import java.util.ArrayList;
import java.util.List;

/** Writes a rule back as the text of a file; reading that text gives the same rule. */
final class RuleWriter {
    private static final int WIDTH = 118;
    private static final String INDENT = "  ";
    private static final String CONTINUED = "    ";

    private final Rule rule;
    private final List<String> lines = new ArrayList<>();

    RuleWriter(Rule rule) {
        this.rule = rule;
    }

    String text() {
        lines.add("rule " + rule.id() + "  " + rule.title());
        String header = header("   ");
        lines.add(fits(header) ? header : header("  "));
        conditions();
        lines.add(INDENT + "then " + rule.conclusion().sentence());
        reason(INDENT + "because " + rule.because());
        return String.join("\n", lines) + "\n";
    }

    private void conditions() {
        String opening = "when ";
        for (Condition condition : rule.conditions()) {
            String line = INDENT + opening + condition.sentence();
            lines.add(fits(line) ? line : INDENT + opening.strip() + " " + condition.sentence());
            opening = "and  ";
        }
    }

    private String header(String gap) {
        String header = INDENT + "source " + String.join(" ", rule.sources()) + ", "
                + rule.standing().word() + gap + "change " + rule.change() + gap + "review by " + rule.reviewBy() + gap
                + "class " + rule.ruleClass();
        return rule.hazards().isEmpty() ? header : header + gap + "hazard " + String.join(" ", rule.hazards());
    }

    private static boolean fits(String line) {
        return line.length() <= RuleParser.LONGEST_LINE;
    }

    private void reason(String line) {
        int at = breakOf(line);
        lines.add(at < 0 ? line : line.substring(0, at));
        if (at >= 0) {
            reason(CONTINUED + line.substring(at + 1));
        }
    }

    /** Where a long line breaks: the last single blank that fits, else the first; several blanks are one author's own. */
    private static int breakOf(String line) {
        int found = -1;
        for (int i = INDENT.length() + "because ".length(); i < line.length() - 1; i++) {
            if (found >= 0 && i > WIDTH || line.length() <= WIDTH) {
                break;
            }
            if (line.charAt(i) == ' ' && line.charAt(i - 1) != ' ' && line.charAt(i + 1) != ' ') {
                found = i;
            }
        }
        return found;
    }
}
