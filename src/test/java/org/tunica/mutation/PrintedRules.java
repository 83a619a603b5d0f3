package org.tunica.mutation;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.Knowledge;
import org.tunica.rules.Rule;
import org.tunica.rules.RuleBook;

/**
 * Prints rules back to sentences and reads them again, so that a mutant goes the way of every shipped rule. The hazards a
 * rule controls are left out: they judge nothing.
 */
final class PrintedRules {
    private PrintedRules() {}

    /**
     * These rules and no others, over this knowledge; change records list what is left.
     *
     * @throws org.tunica.casefile.FaultyInput when they would be refused at the start
     */
    static RuleBook book(Collection<Rule> rules, Knowledge knowledge) {
        Map<String, StringJoiner> files = new TreeMap<>();
        rules.forEach(rule -> files.computeIfAbsent(file(rule), file -> new StringJoiner("\n", "# Printed.\n", ""))
                .add(text(rule)));
        Map<String, String> texts = new HashMap<>();
        files.forEach((file, text) -> texts.put(file, text.toString()));
        return RuleBook.of(Bundle.of(texts), listing(rules, knowledge));
    }

    /** The rule as a file says it, under no hazard. */
    private static String text(Rule rule) {
        return new Rule(
                        rule.id(),
                        rule.title(),
                        rule.sources(),
                        rule.standing(),
                        rule.change(),
                        rule.reviewBy(),
                        rule.ruleClass(),
                        List.of(),
                        rule.conditions(),
                        rule.conclusion(),
                        rule.because(),
                        rule.place())
                .text();
    }

    private static String file(Rule rule) {
        return rule.place().substring(0, rule.place().lastIndexOf(':'));
    }

    private static Knowledge listing(Collection<Rule> rules, Knowledge all) {
        Set<String> ids = rules.stream().map(Rule::id).collect(Collectors.toSet());
        Map<String, ChangeRecord> changes = new TreeMap<>();
        all.changes().forEach((number, change) -> changes.put(number, listing(ids, change)));
        return Altered.knowledge(all, all.quantities(), changes);
    }

    private static ChangeRecord listing(Set<String> ids, ChangeRecord change) {
        List<String> left = change.rules().stream().filter(ids::contains).toList();
        return new ChangeRecord(
                change.number(),
                change.title(),
                change.status(),
                change.authors(),
                change.reviewers(),
                change.approvers(),
                change.reason(),
                change.sources(),
                left,
                change.limits(),
                change.effective(),
                change.replaces(),
                change.retires());
    }
}
