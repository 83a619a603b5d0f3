package org.tunica.rules;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.Faults;

/** The lines of one rule, sorted into header, conditions, conclusion and reason. */
final class RuleBlock {
    private static final Line MISSING = new Line("", "");

    private final String place;
    private final String opening;
    private final List<Line> lines = new ArrayList<>();

    private final List<Line> conditions = new ArrayList<>();
    private final StringBuilder because = new StringBuilder();
    private Line header = MISSING;
    private Line conclusion = MISSING;

    RuleBlock(String place, String opening) {
        this.place = place;
        this.opening = opening.stripTrailing();
    }

    void add(String linePlace, String line) {
        lines.add(new Line(linePlace, line.stripTrailing()));
    }

    int linesCount() {
        return lines.size();
    }

    String place() {
        return place;
    }

    String opening() {
        return opening;
    }

    Line header() {
        return header;
    }

    List<Line> conditions() {
        return conditions;
    }

    Line conclusion() {
        return conclusion;
    }

    String because() {
        return because.toString();
    }

    /** Sorts the lines by their first word; a line out of order or of another kind is noted. */
    void sort(Faults faults) {
        for (Line line : lines) {
            String text = line.text().strip();
            if (!line.text().startsWith("  ")) {
                faults.add(line.place(), "a line of a rule is indented by two blanks");
            } else if (because.length() > 0) {
                reason(line, text, faults);
            } else if (text.startsWith("source ") && conditions.isEmpty() && header == MISSING) {
                header = new Line(line.place(), text);
            } else if (text.startsWith("when ") && conditions.isEmpty()) {
                conditions.add(new Line(line.place(), text.substring(5).strip()));
            } else if (text.startsWith("and ") && !conditions.isEmpty() && conclusion == MISSING) {
                conditions.add(new Line(line.place(), text.substring(4).strip()));
            } else if (text.startsWith("then ") && !conditions.isEmpty() && conclusion == MISSING) {
                conclusion = new Line(line.place(), text.substring(5).strip());
            } else if (text.startsWith("because ") && conclusion != MISSING) {
                because.append(text.substring(8).strip());
            } else {
                faults.add(line.place(), "out of order or unknown; a rule reads: source, when, and, then, because");
            }
        }
        complete(faults);
    }

    private void reason(Line line, String text, Faults faults) {
        if (line.text().startsWith("    ")) {
            because.append(' ').append(text);
        } else {
            faults.add(line.place(), "after \"because\" only its own continuation, indented by four blanks or more");
        }
    }

    private void complete(Faults faults) {
        if (header == MISSING) {
            faults.add(
                    place,
                    "has no line \"source <S-0001>, <standing>  change <0001>  review by <2027-11>  class <class>\"");
        }
        if (conditions.isEmpty()) {
            faults.add(place, "has no condition (\"when ...\")");
        }
        if (conclusion == MISSING) {
            faults.add(place, "has no conclusion (\"then ...\")");
        }
        if (because.length() == 0) {
            faults.add(place, "has no reason (\"because ...\")");
        }
    }

    /** A line with its place. */
    record Line(String place, String text) {}
}
