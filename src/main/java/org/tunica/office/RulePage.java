package org.tunica.office;

import java.util.List;
import org.tunica.frame.Frame;

/**
 * One rule with everything behind it.
 *
 * @param sentence its lines as the file says them
 * @param numbers it names
 * @param sources it rests on
 * @param hazards it controls, in words
 * @param history change records that list it, the first first
 * @param scenarios that show it, as text
 * @param noScenarios why there are none; empty when there are
 * @param probes what the engine says at its boundaries
 * @param unprobed boundaries for which no facts exist, with why
 */
public record RulePage(
        Frame frame,
        RuleRow row,
        List<String> sentence,
        String because,
        List<Number> numbers,
        List<SourceLine> sources,
        List<String> hazards,
        List<Record> history,
        List<Shown> scenarios,
        String noScenarios,
        List<ProbeLine> probes,
        List<String> unprobed) {

    /** A number with its source and standing. */
    public record Number(
            String id, String value, String says, String source, String standing, String since, String note) {}

    /** A source. */
    public record SourceLine(String id, String cites, String read) {}

    /** A change record. */
    public record Record(String number, String title, String status, String effective, String reason) {}

    /** Scenarios of one file. */
    public record Shown(String path, String text) {}

    /** A boundary, what the rule means there, what the engine says. */
    public record ProbeLine(String what, String expected, String said, boolean asExpected) {}
}
