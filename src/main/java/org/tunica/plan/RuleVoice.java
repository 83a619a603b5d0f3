package org.tunica.plan;

import java.util.List;
import java.util.Optional;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Verdict;

/**
 * What one rule says about an option, without the words.
 *
 * @param rule id of the rule
 * @param stands what the rule does to the option
 * @param strength how much it weighs, of a caution and of a reason for or against
 * @param inDoubt what is not recorded; empty when the rule speaks for certain
 */
public record RuleVoice(
        String rule, Reason.Stands stands, Optional<Conclusion.Strength> strength, List<String> inDoubt) {
    public RuleVoice {
        inDoubt = List.copyOf(inDoubt);
    }

    static RuleVoice of(Verdict verdict, Reason.Stands stands) {
        return new RuleVoice(verdict.rule().id(), stands, Reason.strength(verdict.rule()), verdict.doubt());
    }

    static RuleVoice of(Reason reason) {
        return new RuleVoice(reason.rule(), reason.stands(), reason.strength(), reason.inDoubt());
    }
}
