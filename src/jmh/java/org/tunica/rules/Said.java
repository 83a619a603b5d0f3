package org.tunica.rules;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A verdict as all ways of running the rules can give it: which rule, which option, certain or in doubt. */
public record Said(String ruleId, OptionKey option, boolean certain) {
    static Set<String> of(List<Said> all) {
        Set<String> words = new TreeSet<>();
        all.forEach(said -> words.add(said.option() + " " + said.ruleId() + (said.certain() ? "" : "?")));
        return words;
    }

    static Set<String> ofVerdicts(List<Verdict> verdicts) {
        return of(verdicts.stream()
                .map(verdict -> new Said(verdict.rule().id(), verdict.option(), verdict.speaks()))
                .toList());
    }
}
