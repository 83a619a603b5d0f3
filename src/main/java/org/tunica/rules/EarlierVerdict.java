package org.tunica.rules;

/**
 * What a rule said about an option, as a fact for rules of later stages. Public because the engine reads it.
 *
 * @param fact the finding, or the kind of conclusion
 * @param certain false when the rule was in doubt
 */
public record EarlierVerdict(Candidate option, String fact, boolean certain) {
    static String factOf(Rule rule) {
        return rule.conclusion() instanceof Conclusion.Find find
                ? find.finding()
                : Condition.Earlier.factOf(rule.conclusion().kind());
    }
}
