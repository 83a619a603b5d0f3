package org.tunica.plan;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Standing;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Rule;
import org.tunica.rules.Verdict;

/**
 * What one rule says about an option, with everything needed to check it.
 *
 * @param rule id of the rule
 * @param title what is the case when the rule speaks
 * @param stands what the rule does to the option
 * @param strength how much it weighs, of a caution and of a reason for or against
 * @param says the reason in the rule's words
 * @param inDoubt what is not recorded; empty when the rule speaks for certain
 * @param source ids of sources, separated by blanks
 * @param standing how well the rule is supported
 * @param change number of the change record
 * @param limits ids of the limits the rule names
 */
public record Reason(
        String rule,
        String title,
        Stands stands,
        Optional<Conclusion.Strength> strength,
        String says,
        List<String> inDoubt,
        String source,
        Standing standing,
        String change,
        List<String> limits) {

    /** What a rule does to an option. */
    public enum Stands implements Word {
        FINDS,
        EXCLUDES,
        ASKS,
        NOT_IN_ROOM,
        CAUTIONS,
        FOR,
        AGAINST,
        SETS,
        CALLS_THE_MEETING
    }

    /** What a verdict says, with everything behind it. */
    public static Reason of(Verdict verdict, Stands stands) {
        Rule rule = verdict.rule();
        return new Reason(
                rule.id(),
                rule.title(),
                stands,
                strength(rule),
                rule.because(),
                verdict.doubt(),
                String.join(" ", rule.sources()),
                rule.standing(),
                rule.change(),
                List.copyOf(rule.limitIds()));
    }

    /** How much a rule weighs, where it weighs. */
    static Optional<Conclusion.Strength> strength(Rule rule) {
        return rule.conclusion() instanceof Conclusion.Weighed weighed
                ? Optional.of(weighed.strength())
                : Optional.empty();
    }
}
