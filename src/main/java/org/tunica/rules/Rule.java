package org.tunica.rules;

import java.time.YearMonth;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Standing;

/**
 * One rule as a tree: engine, explanation, checks and print-out all come from it. Immutable.
 *
 * @param id for example {@code EXC-007}; never changed, never reused
 * @param title a sentence that is true when the rule speaks
 * @param sources ids of sources
 * @param standing how well the rule as a whole is supported
 * @param change number of the change record
 * @param ruleClass finding, contraindication, data-quality, logistics, caution, preference, setting or meeting
 * @param hazards ids of the hazards it controls
 * @param conditions all must hold
 * @param because the reason for the clinician
 * @param place file and line
 */
public record Rule(
        String id,
        String title,
        List<String> sources,
        Standing standing,
        String change,
        YearMonth reviewBy,
        String ruleClass,
        List<String> hazards,
        List<Condition> conditions,
        Conclusion conclusion,
        String because,
        String place) {

    public Rule {
        sources = List.copyOf(sources);
        hazards = List.copyOf(hazards);
        conditions = List.copyOf(conditions);
    }

    /** Conditions on the option itself, in the order of the file. */
    public List<Condition.OnOption> onOption() {
        return conditions.stream()
                .filter(Condition.OnOption.class::isInstance)
                .map(Condition.OnOption.class::cast)
                .toList();
    }

    /** Conditions on what earlier stages said, in the order of the file. */
    public List<Condition.OnVerdicts> onVerdicts() {
        return conditions.stream()
                .filter(Condition.OnVerdicts.class::isInstance)
                .map(Condition.OnVerdicts.class::cast)
                .toList();
    }

    /** Conditions on findings, in the order of the file. */
    public List<Condition.Found> onFindings() {
        return conditions.stream()
                .filter(Condition.Found.class::isInstance)
                .map(Condition.Found.class::cast)
                .toList();
    }

    /** Whether it is asked once the ranking stands, of the segment and not of an option. */
    public boolean afterRanking() {
        return conclusion.kind().afterRanking();
    }

    /** Ids of every limit the rule names. */
    public Set<String> limitIds() {
        Set<String> ids = new LinkedHashSet<>();
        onOption()
                .forEach(condition ->
                        condition.limits().stream().map(Quantity::id).forEach(ids::add));
        conclusion.limits().stream().map(Quantity::id).forEach(ids::add);
        return ids;
    }

    /** The rule as a file says it, with the blanks and line breaks of no particular author. */
    public String text() {
        return new RuleWriter(this).text();
    }
}
